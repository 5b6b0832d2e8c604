package org.amberyard.core.funding;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Everything about funding that a study says.
 *
 * @param programmes programmes
 * @param exclusions programmes that may not be combined
 * @param credits credits earned by charging
 * @param aids operating aids
 * @param declared what the study declares of vehicles and ports
 */
public record FundingInput(List<Programme> programmes, List<Exclusion> exclusions, List<EnergyCredit> credits,
        List<OperatingAid> aids, Declared declared) {

    /** No funding. */
    public static final FundingInput NONE = of(List.of());

    /**
     * What conditions are checked against.
     *
     * @param domesticTypes places of the vehicle types whose domestic content is declared
     * @param domesticPorts places of the port types whose domestic content is declared
     * @param papers what is told of buses of today, by their number
     */
    public record Declared(Set<Integer> domesticTypes, Set<Integer> domesticPorts, Map<String, BusPapers> papers) {

        /** Nothing is declared. */
        public static final Declared NOTHING = new Declared(Set.of(), Set.of(), Map.of());

        public Declared {
            domesticTypes = Set.copyOf(domesticTypes);
            domesticPorts = Set.copyOf(domesticPorts);
            papers = Map.copyOf(papers);
        }

        /** What is told of a bus; nothing of one that is bought later. */
        public BusPapers papersOf(String unit) {
            return papers.getOrDefault(unit, BusPapers.NOT_TOLD);
        }
    }

    public FundingInput {
        programmes = List.copyOf(programmes);
        exclusions = List.copyOf(exclusions);
        credits = List.copyOf(credits);
        aids = List.copyOf(aids);
    }

    /** Programmes that do not exclude each other, and nothing else. */
    public static FundingInput of(List<Programme> programmes) {
        return new FundingInput(programmes, List.of(), List.of(), List.of(), Declared.NOTHING);
    }

    /** True when two programmes may not be combined on a line. */
    boolean exclude(Programme one, Programme other) {
        return exclusions.stream().anyMatch(e -> e.holds(one.name(), other.name()));
    }
}
