package org.amberyard.core.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.tariff.BillComponent;
import org.amberyard.core.tariff.BillLine;

/**
 * Finds lines of a printed bill among those of a computed one: first by the same words, then by the same amount of one kind, then by
 * the words that they share, then, where a printed line is the only one left of its kind, by its kind. What is found by none stands alone.
 *
 * <p>Lines of the same words are parts of one charge, such as those of a bill within which prices change. Where both bills have as many parts,
 * they are paired in their order, else all parts of the one stand beside all of the other.
 */
final class LineMatching {
    private static final double LEAST_SHARED = 0.5;
    /** Half a cent, below which sums of cents are the same. */
    private static final double SAME_MONEY = 0.005;
    /** Words by which bills name kinds of charges, the most telling first (common practice, no source). */
    private static final List<Map.Entry<BillComponent, Set<String>>> KINDS = List.of(
            Map.entry(BillComponent.TAX, Set.of("tax", "taxes", "franchise")),
            Map.entry(BillComponent.MINIMUM, Set.of("minimum")),
            Map.entry(BillComponent.RIDER, Set.of("rider", "riders", "adjustment", "surcharge", "fuel", "credit", "recovery", "adder")),
            Map.entry(BillComponent.DEMAND, Set.of("demand", "kw", "capacity")),
            Map.entry(BillComponent.ENERGY, Set.of("energy", "kwh", "usage", "consumption")),
            Map.entry(BillComponent.CUSTOMER, Set.of("customer", "basic", "service", "fixed", "meter", "facilities")));

    private final List<PrintedLine> printed;
    private final List<BillLine> computed;
    private final List<AuditLine> found = new ArrayList<>();

    private LineMatching(List<PrintedLine> printed, List<BillLine> computed) {
        this.printed = new ArrayList<>(printed);
        this.computed = new ArrayList<>(computed);
    }

    /** Lines of a printed bill beside those by the tariff, in the order of the printed bill; what only the tariff asks comes last. */
    static List<AuditLine> of(List<PrintedLine> printed, List<BillLine> computed) {
        LineMatching matching = new LineMatching(printed, computed);
        matching.byWords(1);
        matching.byAmount();
        matching.byWords(LEAST_SHARED);
        matching.byKind();
        matching.printed.forEach(p -> matching.found.add(new AuditLine(List.of(p), List.of())));
        matching.computed.forEach(c -> matching.found.add(new AuditLine(List.of(), List.of(c))));
        return matching.found.stream().sorted((one, other) -> Integer.compare(place(one, printed), place(other, printed))).toList();
    }

    private static int place(AuditLine line, List<PrintedLine> printed) {
        return line.printed().stream().mapToInt(p -> identityIndex(printed, p)).min().orElse(printed.size());
    }

    private static int identityIndex(List<PrintedLine> lines, PrintedLine line) {
        int place = 0;
        while (lines.get(place) != line) {
            place++;
        }
        return place;
    }

    /** Pairs lines that share at least a part of their words, those that share most first. */
    private void byWords(double leastShared) {
        for (Optional<Pair> best = best(leastShared); best.isPresent(); best = best(leastShared)) {
            Set<String> ofLine = words(best.get().printed().name());
            Set<String> ofCharge = words(best.get().computed().label());
            parts(printed.stream().filter(p -> words(p.name()).equals(ofLine)).toList(),
                    computed.stream().filter(c -> words(c.label()).equals(ofCharge)).toList());
        }
    }

    private void parts(List<PrintedLine> lines, List<BillLine> charges) {
        if (lines.size() == charges.size()) {
            IntStream.range(0, lines.size()).forEach(i -> take(List.of(lines.get(i)), List.of(charges.get(i))));
        } else {
            take(lines, charges);
        }
    }

    /** Pairs lines of one kind and the same amount. */
    private void byAmount() {
        for (PrintedLine line : List.copyOf(printed)) {
            computed.stream().filter(c -> kind(line).equals(Optional.of(c.component())))
                    .filter(c -> line.amount() != 0 && Math.abs(c.amount() - line.amount()) < SAME_MONEY).findFirst()
                    .ifPresent(c -> take(List.of(line), List.of(c)));
        }
    }

    private record Pair(PrintedLine printed, BillLine computed, double shared) {
    }

    private Optional<Pair> best(double leastShared) {
        Pair best = null;
        for (PrintedLine line : printed) {
            for (BillLine charge : computed) {
                double shared = shared(words(line.name()), words(charge.label()));
                if (shared >= leastShared && (best == null || shared > best.shared())) {
                    best = new Pair(line, charge, shared);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Gives a printed line that is the only one left of its kind all charges left of that kind. */
    private void byKind() {
        for (Map.Entry<BillComponent, Set<String>> kind : KINDS) {
            List<PrintedLine> lines = printed.stream().filter(l -> kind(l).equals(Optional.of(kind.getKey()))).toList();
            List<BillLine> charges = computed.stream().filter(c -> c.component() == kind.getKey()).toList();
            if (lines.size() == 1 && !charges.isEmpty()) {
                take(lines, charges);
            }
        }
    }

    private void take(List<PrintedLine> lines, List<BillLine> charges) {
        found.add(new AuditLine(lines, charges));
        printed.removeIf(p -> lines.stream().anyMatch(l -> l == p));
        computed.removeIf(c -> charges.stream().anyMatch(t -> t == c));
    }

    private static Optional<BillComponent> kind(PrintedLine line) {
        Set<String> words = words(line.name());
        return KINDS.stream().filter(k -> k.getValue().stream().anyMatch(words::contains)).map(Map.Entry::getKey).findFirst();
    }

    /** Words in common over all words of both. */
    private static double shared(Set<String> one, Set<String> other) {
        long common = one.stream().filter(other::contains).count();
        return common == 0 ? 0 : (double) common / (one.size() + other.size() - common);
    }

    /** Words of a line, what only joins or counts them left out. */
    private static Set<String> words(String name) {
        return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")).filter(w -> w.length() > 1)
                .filter(w -> !Set.of("charge", "charges", "of", "the", "to", "for", "per", "at", "and").contains(w))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
