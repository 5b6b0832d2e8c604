package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The steps that a rule writes.
 *
 * @param steps buses replaced, by year, the oldest first
 * @param ports ports bought, by year
 * @param left places that the rule leaves as they are, and why
 */
public record PlanFilling(List<Step> steps, List<Ports> ports, List<Left> left) {

    /**
     * A bus is replaced.
     *
     * @param year year, counted from the base year
     * @param place place in the list of buses
     * @param type type bought
     */
    public record Step(int year, int place, int type) {
    }

    /**
     * Ports are bought.
     *
     * @param year year, counted from the base year
     * @param count number
     */
    public record Ports(int year, int count) {
    }

    /** Why a rule leaves a bus as it is. */
    public enum Reason {
        /** Its bus is electric already. */
        ELECTRIC_ALREADY,
        /** No electric type does its route with an aged pack. */
        NO_TYPE_DOES_IT,
        /** Its turn would come after the last year. */
        TOO_LATE
    }

    /**
     * A place that stays as it is.
     *
     * @param place place in the list of buses
     * @param why why
     */
    public record Left(int place, Reason why) {
    }

    public PlanFilling {
        steps = List.copyOf(steps);
        ports = List.copyOf(ports);
        left = List.copyOf(left);
    }

    /** What a rule writes into a plan for the present fleet of a study. */
    public static PlanFilling of(StudyResult result, PlanInput plan, FillRule rule) {
        return new Writer(result, plan, rule).filling();
    }

    private static final class Writer {
        private final StudyResult result;
        private final StudyInput study;
        private final PlanInput plan;
        private final FillRule rule;
        private final List<Step> steps = new ArrayList<>();
        private final List<Left> left = new ArrayList<>();

        Writer(StudyResult result, PlanInput plan, FillRule rule) {
            this.result = result;
            this.study = result.input();
            this.plan = plan;
            this.rule = rule;
        }

        PlanFilling filling() {
            List<Step> candidates = candidates();
            for (int turn = 0; turn < candidates.size(); turn++) {
                Step candidate = candidates.get(turn);
                int year = Math.max(year(candidate.place(), turn, candidates.size()),
                        study.buses().get(candidate.place()).inServiceYear());
                if (year > Math.min(rule.lastYear(), study.years() - 1)) {
                    left.add(new Left(candidate.place(), Reason.TOO_LATE));
                } else {
                    steps.add(new Step(year, candidate.place(), candidate.type()));
                }
            }
            steps.sort(Comparator.comparingInt(Step::year));
            boolean withPorts = rule.electric() && rule.ports().port().isPresent();
            return new PlanFilling(steps, withPorts ? new FilledPorts(study, plan, rule, steps).bought() : List.of(), left);
        }

        /** Places that can be filled, the oldest bus first; of equals the one with more distance. */
        private List<Step> candidates() {
            Comparator<Integer> oldest = Comparator.comparingInt((Integer p) -> study.buses().get(p).inServiceYear())
                    .thenComparing(Comparator.comparingDouble((Integer p) -> study.buses().get(p).odometerKm()).reversed());
            List<Integer> order = IntStream.range(0, study.buses().size())
                    .filter(p -> rule.roles().contains(study.buses().get(p).role())).boxed().sorted(oldest).toList();
            List<Step> found = new ArrayList<>();
            for (int place : order) {
                OptionalInt type = type(study.buses().get(place));
                boolean electric = study.types().get(study.buses().get(place).type()).electric().isPresent();
                if (rule.electric() && electric) {
                    left.add(new Left(place, Reason.ELECTRIC_ALREADY));
                } else if (type.isEmpty()) {
                    left.add(new Left(place, Reason.NO_TYPE_DOES_IT));
                } else {
                    found.add(new Step(0, place, type.getAsInt()));
                }
            }
            return found;
        }

        private OptionalInt type(BusInput bus) {
            if (!rule.electric()) {
                return OptionalInt.of(study.types().get(bus.type()).successor());
            }
            return bus.route().isPresent() ? bestOnRoute(bus.route().getAsInt()) : sameBody(bus);
        }

        /** The cheapest of those that do the route with an aged pack; of equals the one with the larger margin. */
        private OptionalInt bestOnRoute(int route) {
            boolean midday = study.middayCharging();
            return ElectricTypes.doing(result, route).stream()
                    .min(Comparator.comparingDouble((RouteFit f) -> study.types().get(f.type()).prices().purchase())
                            .thenComparingDouble(f -> -f.whenAged(midday).marginKwh()))
                    .map(f -> OptionalInt.of(f.type())).orElse(OptionalInt.empty());
        }

        private OptionalInt sameBody(BusInput bus) {
            return ElectricTypes.sameBody(study, bus).stream().mapToInt(t -> t).findFirst();
        }

        private int year(int place, int turn, int all) {
            return switch (rule.pace()) {
                case AT_AGE -> Math.max(rule.firstYear(), study.buses().get(place).inServiceYear() + rule.number());
                case PER_YEAR -> rule.firstYear() + turn / rule.number();
                case ALL_BY -> rule.firstYear() + turn * (rule.lastYear() - rule.firstYear() + 1) / all;
            };
        }
    }
}
