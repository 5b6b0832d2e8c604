package org.amberyard.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.Emissions;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.plan.AirWhy;
import org.amberyard.core.plan.BenefitWhy;
import org.amberyard.core.plan.PlaceholderUse;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.core.plan.ReplacedBuses;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.why.Derivation;
import org.amberyard.report.ResultRows.OfYear;

/** What the rows of the tables of the air are made from. */
final class AirRows {
    private AirRows() {
    }

    /** A pollutant in a year of a plan. */
    record OfPollutant(OfYear at, Pollutant pollutant) {
        Emissions emissions() {
            return at.plan().air().get(at.year()).emissions();
        }

        double kg(EmissionSource source) {
            return emissions().of(source).kg(pollutant);
        }

        double total() {
            return emissions().total().kg(pollutant);
        }

        Derivation why(EmissionSource source) {
            return new AirWhy(at.result()).source(at.plan(), at.year(), source, pollutant);
        }

        Derivation whyTotal() {
            return new AirWhy(at.result()).total(at.plan(), at.year(), pollutant);
        }

        static List<OfPollutant> all(StudyResult result) {
            return OfYear.all(result).stream().flatMap(y -> Stream.of(Pollutant.values()).map(p -> new OfPollutant(y, p))).toList();
        }
    }

    /** The buses that a plan replaces. */
    record OfProject(StudyResult result, PlanResult plan, List<ReplacedBus> buses) {
        static List<OfProject> all(StudyResult result) {
            List<OfProject> rows = new ArrayList<>();
            for (int plan = 0; plan < result.plans().size(); plan++) {
                List<ReplacedBus> buses = ReplacedBuses.of(result, plan);
                if (!buses.isEmpty()) {
                    rows.add(new OfProject(result, result.plans().get(plan), buses.stream()
                            .sorted(Comparator.comparingInt(ReplacedBus::year).thenComparingInt(ReplacedBus::place)).toList()));
                }
            }
            return rows;
        }
    }

    /** A measure of one bus that a plan replaces, or of all of them together. */
    record OfBenefit(OfProject project, List<ReplacedBus> buses, GrantMeasure measure) {
        boolean single() {
            return buses.size() == 1 && buses != project.buses();
        }

        ReplacedBus bus() {
            return buses.get(0);
        }

        double before() {
            return buses.stream().mapToDouble(b -> measure.kg(b.before())).sum();
        }

        double after() {
            return buses.stream().mapToDouble(b -> measure.kg(b.after())).sum();
        }

        double reduced() {
            return before() - after();
        }

        double inLife() {
            return buses.stream().mapToDouble(b -> b.remainingYears() * (measure.kg(b.before()) - measure.kg(b.after()))).sum();
        }

        double afterOf(EmissionSource source) {
            return buses.stream().mapToDouble(b -> measure.elsewhereKg(b.after().of(source))).sum();
        }

        double upstreamReduced() {
            return buses.stream().mapToDouble(b -> measure.elsewhereKg(b.before().of(EmissionSource.UPSTREAM))).sum()
                    - afterOf(EmissionSource.UPSTREAM);
        }

        /** How the reduction of a year comes about, in short tons. */
        Derivation whyReduced() {
            return GrantWhy.sum(this, measure.label() + " reduced in a year", reduced(), BenefitWhy::reduced);
        }

        /** How the reduction in the remaining lives comes about, in short tons. */
        Derivation whyInLife() {
            return GrantWhy.sum(this, measure.label() + " reduced in the remaining life", inLife(), BenefitWhy::lifetime);
        }

        double km() {
            return buses.stream().mapToDouble(b -> b.old().use().km()).sum();
        }

        static List<OfBenefit> all(StudyResult result) {
            List<OfBenefit> rows = new ArrayList<>();
            for (OfProject project : OfProject.all(result)) {
                project.buses().forEach(b -> Stream.of(GrantMeasure.values())
                        .forEach(m -> rows.add(new OfBenefit(project, List.of(b), m))));
                Stream.of(GrantMeasure.values()).forEach(m -> rows.add(new OfBenefit(project, project.buses(), m)));
            }
            return rows;
        }

        static boolean restsOnPlaceholders(StudyResult result) {
            return OfProject.all(result).stream().anyMatch(p -> PlaceholderUse.inReplaced(p.buses()));
        }
    }
}
