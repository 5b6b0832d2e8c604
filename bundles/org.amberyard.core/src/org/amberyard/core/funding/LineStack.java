package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.why.Derivation;

/**
 * What is left of a line while programmes are applied to it one after the other. An award is taken off the parts of the cost
 * that its programme covers, in proportion to what is left of them.
 */
final class LineStack {
    private final Purchase purchase;
    private final double[] left;
    private final double[] federal;
    private final List<Programme> paying = new ArrayList<>();

    LineStack(Purchase purchase) {
        this.purchase = purchase;
        this.left = purchase.parts().stream().mapToDouble(Derivation::value).toArray();
        this.federal = new double[left.length];
    }

    /** Programmes that pay a part already, in order. */
    List<Programme> paying() {
        return paying;
    }

    /** Cost that a programme covers. */
    Derivation covered(Programme programme) {
        return Derivation.sum("Cost covered", Derivation.MONEY,
                parts(programme).mapToObj(purchase.parts()::get).toList());
    }

    /** What the programmes before leave of the cost that a programme covers. */
    double left(Programme programme) {
        return sum(left, programme);
    }

    /**
     * Most that a programme may pay so that the match of one of the programmes on the line, itself included, is still met;
     * infinite when it does not bear on it.
     */
    double room(Programme holder, Programme payer) {
        Match match = holder.match();
        boolean bears = match.from() == Match.From.OWN || payer.kind() == MoneyKind.FEDERAL;
        double shared = parts(payer).filter(i -> covers(holder, i)).mapToDouble(i -> left[i]).sum();
        double weight = left(payer) > 0 ? shared / left(payer) : 0;
        if (match.share() <= 0 || !bears || weight <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double covered = covered(holder).value();
        double counted = match.from() == Match.From.OWN ? sum(left, holder) : covered - sum(federal, holder);
        return Math.max(0, counted - match.share() * covered) / weight;
    }

    /** Takes an award off the cost. */
    void take(Programme programme, double amount) {
        double open = left(programme);
        if (amount <= 0 || open <= 0) {
            return;
        }
        parts(programme).forEach(i -> {
            double part = amount * left[i] / open;
            left[i] = Math.max(0, left[i] - part);
            federal[i] += programme.kind() == MoneyKind.FEDERAL ? part : 0;
        });
        paying.add(programme);
    }

    private double sum(double[] amounts, Programme programme) {
        return parts(programme).mapToDouble(i -> amounts[i]).sum();
    }

    private IntStream parts(Programme programme) {
        return IntStream.range(0, left.length).filter(i -> covers(programme, i));
    }

    private boolean covers(Programme programme, int part) {
        return purchase.kind() != Purchase.Kind.PORTS || programme.offer().ports().covers().covers(part);
    }

    /** What nobody pays for: own money. */
    double own() {
        return Arrays.stream(left).sum();
    }
}
