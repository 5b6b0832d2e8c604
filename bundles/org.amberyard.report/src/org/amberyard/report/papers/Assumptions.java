package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.study.MoneyBasis;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage.Literals;
import org.eclipse.emf.ecore.EReference;

/**
 * What the plans of a study stand on, and in which parts another study differs, so that a board can see whether figures side by side
 * may be compared.
 *
 * @param version version of the study
 * @param tariff name of the tariff that the depot uses; blank where it has none
 * @param site name of the site, whose climate holds
 * @param baseYear base year
 * @param constantMoney true when figures are in constant money
 * @param parts sum over each part of the inputs
 */
public record Assumptions(String version, String tariff, String site, int baseYear, boolean constantMoney, List<String> parts) {

    /** A part of the inputs that all plans share. */
    private enum Part {
        PRICES("prices", Literals.STUDY__PRICES),
        DEPOT("depot with tariff", Literals.STUDY__DEPOT),
        CLIMATE("climate", Literals.STUDY__SITE),
        SETTINGS("base date with money rules", Literals.STUDY__SETTINGS),
        TYPES("bus types", Literals.STUDY__VEHICLE_TYPES),
        BUSES("buses of today", Literals.STUDY__BUSES, Literals.STUDY__BUS_RECORDS),
        ROUTES("routes with trips", Literals.STUDY__CALENDARS, Literals.STUDY__ROUTES, Literals.STUDY__TRIPS, Literals.STUDY__TRACES,
                Literals.STUDY__CONSUMPTION_LOGS),
        PROGRAMMES("programmes", Literals.STUDY__PROGRAMMES, Literals.STUDY__LOW_CARBON_CREDITS, Literals.STUDY__OPERATING_AIDS),
        TASKS("upkeep tasks", Literals.STUDY__MAINTENANCE_TASKS),
        FACTORS("emission factors", Literals.STUDY__EMISSION_FACTORS);

        private final String label;
        private final List<EReference> held;

        Part(String label, EReference... held) {
            this.label = label;
            this.held = List.of(held);
        }
    }

    public Assumptions {
        parts = List.copyOf(parts);
    }

    /** Those of a study. */
    public static Assumptions of(Study study) {
        List<String> sums = Arrays.stream(Part.values()).map(part -> StudyVersion.of(study, part.held)).toList();
        String tariff = Optional.ofNullable(study.getDepot()).map(Depot::getTariff).map(Tariff::getName).orElse("");
        return new Assumptions(StudyVersion.of(study), tariff, study.getSite() == null ? "" : study.getSite().getName(),
                study.getSettings().getBaseYear(), study.getSettings().getMoneyBasis() == MoneyBasis.CONSTANT, sums);
    }

    /** That all plans of the study stand on the same. */
    public String words() {
        return "All plans stand on the same assumptions: prices, tariff “" + tariff + "”, climate of “" + site + "”, base year " + baseYear
                + ", " + (constantMoney ? "constant money" : "money of the year") + "; study version " + version + ".";
    }

    /** In which parts another study differs from this one, and which are the same. */
    public String against(Assumptions other, String name) {
        List<String> same = new ArrayList<>();
        List<String> differs = new ArrayList<>();
        for (Part part : Part.values()) {
            (parts.get(part.ordinal()).equals(other.parts.get(part.ordinal())) ? same : differs).add(part.label);
        }
        String versions = "; versions " + version + " and " + other.version + ".";
        if (differs.isEmpty()) {
            return "“" + name + "” stands on the same assumptions: " + String.join(", ", same) + versions;
        }
        return "“" + name + "” stands on other assumptions: " + String.join(", ", differs)
                + (same.isEmpty() ? "" : "; the same: " + String.join(", ", same)) + versions;
    }
}
