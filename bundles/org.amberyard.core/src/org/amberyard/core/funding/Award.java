package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.why.Derivation;

/**
 * What one programme pays for one line: what it asks by its rule, or the least of its limits. Money of the year of purchase.
 *
 * @param programme place of the programme
 * @param asked what its rule comes to
 * @param bounds its limits, in the order in which they are named where several are equally low
 */
public record Award(int programme, Derivation asked, List<Bound> bounds) {
    /** Less than this is rounding, not a limit that bites: half a cent. */
    private static final double ROUNDING = 0.005;
    private static final Comparator<Bound> LEAST = Comparator.comparingDouble((Bound b) -> b.amount().value())
            .thenComparing(Bound::limit);

    public Award {
        bounds = List.copyOf(bounds);
    }

    /** What it pays. */
    public double paid() {
        return bounds.stream().mapToDouble(b -> b.amount().value()).reduce(asked.value(), Math::min);
    }

    /** True where nothing refuses it, though its limits may leave nothing to pay. */
    public boolean takesPart() {
        return bounds.stream().noneMatch(b -> b.limit().refuses());
    }

    /** The limit that bit; empty when what was asked is paid. */
    public Optional<Bound> bite() {
        return bounds.stream().filter(b -> b.limit().refuses() || b.amount().value() < asked.value() - ROUNDING).min(LEAST);
    }

    /** Kind of the limit that bit. */
    public Limit limit() {
        return bite().map(Bound::limit).orElse(Limit.NONE);
    }

    /** How it comes about. */
    public Derivation why(String name) {
        List<Derivation> parts = new ArrayList<>(List.of(asked));
        bounds.forEach(b -> parts.add(b.amount()));
        String rule = bite().map(b -> "least of what is asked and the limits: " + b.words()).orElse("what is asked, within the limits");
        return Derivation.of(name, paid(), Derivation.MONEY, rule, parts.toArray(Derivation[]::new));
    }
}
