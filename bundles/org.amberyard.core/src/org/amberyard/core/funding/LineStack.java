package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What is left of a line while programmes are applied to it one after the other. An award is taken off the parts of the cost
 * that its programme covers, in proportion to what is left of them.
 */
final class LineStack {
    private final boolean ports;
    private final double[] parts;
    private final double[] left;
    private final double[] federal;
    private final List<Programme> paying = new ArrayList<>();
    private final List<Double> amounts = new ArrayList<>();

    LineStack(Purchase purchase) {
        this(purchase.kind() == Purchase.Kind.PORTS, purchase.parts().stream().mapToDouble(part -> part.value()).toArray());
    }

    /**
     * A line of which nothing is paid for yet.
     *
     * @param ports true for ports
     * @param parts its cost by part; not changed
     */
    LineStack(boolean ports, double[] parts) {
        this.ports = ports;
        this.parts = parts;
        this.left = parts.clone();
        this.federal = new double[parts.length];
    }

    /** Programmes that pay a part already, in order. */
    List<Programme> paying() {
        return paying;
    }

    /** Cost that a programme covers. */
    double covered(Programme programme) {
        return sum(parts, programme);
    }

    /** What the programmes before leave of the cost that a programme covers. */
    double left(Programme programme) {
        return sum(left, programme);
    }

    /** What a match is a share of, by what is paid so far. */
    double matchBase(Programme holder) {
        return switch (holder.match().base()) {
            case COVERED -> covered(holder);
            case WHOLE -> Arrays.stream(parts).sum();
            case AWARD -> paid(holder);
        };
    }

    private double paid(Programme programme) {
        int place = paying.indexOf(programme);
        return place < 0 ? 0 : amounts.get(place);
    }

    /**
     * Most that a programme may pay so that the match of one of the programmes on the line, itself included, is still met;
     * infinite when it does not bear on it.
     */
    double room(Programme holder, Programme payer) {
        Match match = holder.match();
        if (match.share() <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        boolean takes = match.from() == Match.From.OWN || payer.kind() == MoneyKind.FEDERAL || payer == holder;
        double asks = match.base() == Match.Base.AWARD && payer == holder ? match.share() : 0;
        double weight = (takes ? shared(holder, payer) : 0) + asks;
        return weight <= 0 ? Double.POSITIVE_INFINITY : Math.max(0, counted(holder) - match.share() * matchBase(holder)) / weight;
    }

    /** Money that counts for the match of a programme as long as nothing more is paid; its own award never does. */
    double counted(Programme holder) {
        boolean own = holder.match().from() == Match.From.OWN;
        double[] counted = left.clone();
        if (!own) {
            Arrays.setAll(counted, i -> parts[i] - federal[i]);
        }
        double all = holder.match().base() == Match.Base.WHOLE ? Arrays.stream(counted).sum() : sum(counted, holder);
        return own || holder.kind() == MoneyKind.FEDERAL ? all : all - paid(holder);
    }

    /** Part of what a programme pays that is taken off the cost of which the match of another is a share. */
    private double shared(Programme holder, Programme payer) {
        double shared = 0;
        for (int i = 0; i < left.length; i++) {
            shared += covers(payer, i) && (holder.match().base() == Match.Base.WHOLE || covers(holder, i)) ? left[i] : 0;
        }
        return left(payer) > 0 ? shared / left(payer) : 0;
    }

    /** Takes an award off the cost. */
    void take(Programme programme, double amount) {
        double open = left(programme);
        if (amount <= 0 || open <= 0) {
            return;
        }
        for (int i = 0; i < left.length; i++) {
            if (covers(programme, i)) {
                double part = amount * left[i] / open;
                left[i] = Math.max(0, left[i] - part);
                federal[i] += programme.kind() == MoneyKind.FEDERAL ? part : 0;
            }
        }
        paying.add(programme);
        amounts.add(amount);
    }

    private double sum(double[] amounts, Programme programme) {
        double sum = 0;
        for (int i = 0; i < amounts.length; i++) {
            sum += covers(programme, i) ? amounts[i] : 0;
        }
        return sum;
    }

    private boolean covers(Programme programme, int part) {
        return !ports || programme.offer().ports().covers().covers(part);
    }
}
