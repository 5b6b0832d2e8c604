package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.progress.Progress;

/**
 * What can be done in each place that the best plan decides on: leave the bus to the rule of its type, or replace it in a year no
 * later than the rule would or than the plan does, by an electric type that does the route to the end of its pack, or by the engine
 * type that follows; without money of programmes, with that of each that pays, and with that of several together: of all, and of every
 * set of as few as can be tried. Places between which buses move,
 * from which steps retire a bus, for which the plan buys a used one or a bus in other years, are left as the plan has them.
 *
 * @param places places in the list of buses that are decided on
 * @param options options by place; the first leaves the bus to the rule
 */
record PlaceChoices(List<Integer> places, List<List<Option>> options) {
    /** Programmes of which every set is tried. */
    static final int MOST_IN_SETS = 4;

    /**
     * An option.
     *
     * @param step the step; empty leaves the bus to the rule
     * @param electric true when an electric bus comes
     * @param probed what the place comes to by itself
     */
    record Option(Optional<PlanInput.Replacement> step, boolean electric, PlaceProbe.Probed probed) {

        /** True when an electric bus stands there by the start of a year. */
        boolean electricBy(int year) {
            return electric && step.orElseThrow().year() <= year;
        }
    }

    PlaceChoices {
        places = List.copyOf(places);
        options = options.stream().map(List::copyOf).toList();
    }

    /** The choices of a plan of a study that has been evaluated. */
    static PlaceChoices of(StudyResult result, PlanInput plan, BestPlanAim aim, PlaceProbe probe, Progress progress) {
        return new Collector(result, plan, aim, probe).choices(progress);
    }

    private static final class Collector {
        private final StudyResult result;
        private final StudyInput study;
        private final PlanInput plan;
        private final BestPlanAim aim;
        private final PlaceProbe probe;

        Collector(StudyResult result, PlanInput plan, BestPlanAim aim, PlaceProbe probe) {
            this.result = result;
            this.study = result.input();
            this.plan = plan;
            this.aim = aim;
            this.probe = probe;
        }

        PlaceChoices choices(Progress progress) {
            List<Integer> places = IntStream.range(0, study.buses().size()).filter(this::decided).boxed().toList();
            List<List<Option>> options = new ArrayList<>();
            for (int place : places) {
                progress.at((double) options.size() / places.size());
                options.add(options(place));
            }
            return new PlaceChoices(places, options);
        }

        private boolean decided(int place) {
            BusInput bus = study.buses().get(place);
            return aim.roles().contains(bus.role()) && study.types().get(bus.type()).engine().isPresent()
                    && plan.replacements().stream().noneMatch(r -> r.cascadeTo().equals(OptionalInt.of(place)) || r.place() == place
                            && (r.newType().isEmpty() || r.cascadeTo().isPresent() || r.used().isPresent()
                                    || r.year() < aim.firstYear() || r.year() > aim.lastYear()));
        }

        private List<Option> options(int place) {
            PlaceProbe.Probed kept = probe.of(place, Optional.empty());
            int first = Math.max(aim.firstYear(), study.buses().get(place).inServiceYear());
            int byPlan = plan.replacements().stream().filter(r -> r.place() == place).mapToInt(PlanInput.Replacement::year).min()
                    .orElse(-1);
            int last = Math.min(aim.lastYear(), Math.max(byPlan, kept.firstYear().orElse(study.years() - 1)));
            List<PlanInput.Replacement> steps = new ArrayList<>();
            for (int year = first; year <= last; year++) {
                addSteps(place, year, kept.firstYear(), steps);
            }
            return Stream.concat(Stream.of(new Option(Optional.empty(), false, kept)),
                    steps.parallelStream().flatMap(s -> probed(s).stream())).toList();
        }

        /** A step as it is paid for; none where no programme pays that is asked, because the step without is there too. */
        private Optional<Option> probed(PlanInput.Replacement step) {
            PlaceProbe.Probed probed = probe.of(step.place(), Optional.of(step));
            List<Integer> paying = probed.paying().stream().sorted().toList();
            boolean electric = study.types().get(step.newType().getAsInt()).electric().isPresent();
            return !step.programmes().isEmpty() && paying.isEmpty() ? Optional.empty()
                    : Optional.of(new Option(Optional.of(step(step.place(), step.year(), step.newType().getAsInt(), paying)), electric,
                            probed));
        }

        private void addSteps(int place, int year, OptionalInt ruleYear, List<PlanInput.Replacement> steps) {
            BusInput bus = study.buses().get(place);
            List<Integer> open = aim.programmes().stream().filter(p -> study.funding().programmes().get(p).paysIn(year)).toList();
            for (int type : electricTypes(bus)) {
                sets(open).forEach(paying -> steps.add(step(place, year, type, paying)));
            }
            boolean follows = study.types().get(study.types().get(bus.type()).successor()).engine().isPresent();
            if (aim.engines() && follows && !ruleYear.equals(OptionalInt.of(year))) {
                steps.add(step(place, year, study.types().get(bus.type()).successor(), List.of()));
            }
        }

        /** Sets of programmes to be asked, none first. */
        private static List<List<Integer>> sets(List<Integer> open) {
            if (open.size() <= MOST_IN_SETS) {
                return IntStream.range(0, 1 << open.size()).mapToObj(set -> IntStream.range(0, open.size())
                        .filter(p -> (set >> p & 1) != 0).mapToObj(open::get).toList()).toList();
            }
            Stream<List<Integer>> pairs = IntStream.range(0, open.size()).boxed()
                    .flatMap(a -> open.subList(a + 1, open.size()).stream().map(b -> List.of(open.get(a), b)));
            return Stream.of(Stream.of(List.<Integer>of()), open.stream().map(List::of), pairs, Stream.of(open)).flatMap(s -> s).toList();
        }

        private static PlanInput.Replacement step(int place, int year, int type, List<Integer> programmes) {
            return new PlanInput.Replacement(year, place, OptionalInt.of(type), OptionalInt.empty(), programmes);
        }

        /** Those that do the route with an aged pack; without a route those of the same body. */
        private List<Integer> electricTypes(BusInput bus) {
            if (bus.route().isPresent()) {
                return ElectricTypes.doing(result, bus.route().getAsInt()).stream().map(RouteFit::type).sorted(Comparator.naturalOrder())
                        .toList();
            }
            return ElectricTypes.sameBody(study, bus);
        }
    }

    /** Steps that picks write. */
    List<PlanInput.Replacement> steps(int[] picks) {
        return IntStream.range(0, picks.length).mapToObj(p -> options.get(p).get(picks[p]).step()).flatMap(Optional::stream)
                .sorted(Comparator.comparingInt(PlanInput.Replacement::year).thenComparingInt(PlanInput.Replacement::place)).toList();
    }

    /** Most places in which an electric bus can stand by the start of a year. */
    int mostElectricBy(int year) {
        return (int) options.stream().filter(place -> place.stream().anyMatch(o -> o.electricBy(year))).count();
    }
}
