package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.core.optimum.ChoiceBound;
import org.amberyard.core.optimum.ChoiceProblem;
import org.amberyard.core.optimum.ChoiceSearch;
import org.amberyard.core.progress.Progress;

/** The search for a {@link BestPlan}. */
final class BestPlanSearch {
    private static final int MOST_ROUNDS = 5;
    /** Costing the places takes about as long as all rounds. */
    private static final int CHOICES_PARTS = MOST_ROUNDS;
    private static final int PARTS = CHOICES_PARTS + MOST_ROUNDS;

    private final StudyResult result;
    private final StudyInput study;
    private final PlanResult before;
    private final BestPlanAim aim;
    private final Progress progress;
    private final PlaceChoices choices;
    private final PlanResult left;
    private final PlanProblem problem;
    private final List<PortPrice> portPrices;

    /** What one more port costs at present, and who pays a part. */
    private record PortPrice(double cost, List<Integer> payers) {
    }

    /** Picks evaluated whole. */
    private record Candidate(List<PlanInput.Replacement> steps, PlanResult plan) {
    }

    BestPlanSearch(StudyResult result, PlanResult before, BestPlanAim aim, Progress progress) {
        this.result = result;
        this.study = result.input();
        this.before = before;
        this.aim = aim;
        this.progress = progress;
        PlaceProbe probe = new PlaceProbe(study, before.plan(), result.duty(), result.figures(), port());
        this.choices = PlaceChoices.of(result, before.plan(), aim, probe, progress.part(0, 2));
        if (choices.places().isEmpty()) {
            throw new IllegalArgumentException("Plan " + before.name() + " has no place to decide on");
        }
        double without = probe.noPort().presentCost();
        this.portPrices = IntStream.range(0, study.years()).mapToObj(y -> portPrice(probe, y, without)).toList();
        this.left = evaluated(List.of(), share -> progress.part(0, 2).at(1)).plan;
        this.problem = new PlanProblem(study, left, aim, choices);
    }

    private int port() {
        return aim.ports().port().getAsInt();
    }

    private PortPrice portPrice(PlaceProbe probe, int year, double without) {
        PlaceProbe.Probed paid = probe.port(year, aim.programmes().stream()
                .filter(p -> study.funding().programmes().get(p).paysIn(year)).toList());
        return new PortPrice(paid.presentCost() - without, paid.paying().stream().sorted().toList());
    }

    private double[] portCosts() {
        return portPrices.stream().mapToDouble(PortPrice::cost).toArray();
    }

    BestPlan answer() {
        PlanEnergyPrices prices = new PlanEnergyPrices(study);
        ChoiceProblem lower = problem.at(prices.least(), leastShares(), PlanProblem.room(left));
        Progress first = progress.part(CHOICES_PARTS, PARTS);
        ChoiceBound relaxed = ChoiceBound.of(lower, first.part(0, 2));
        ChoiceSearch.Found least = ChoiceSearch.of(lower, relaxed, List.of(), first.part(1, 2));
        Candidate best = search(prices, least.picks());
        List<BestPlan.NoBound> none = noBound(prices, least);
        double portsThere = aim.ports().busesPerPort() * leastShares()[0] * portsBefore();
        return new BestPlan(best.plan, best.steps, choices.places(), before.presentCostAfterFinancing(), CapLevelling.Unmet.of(before),
                none.isEmpty() ? OptionalDouble.of(left.presentCostAfterFinancing() + (least.proven() ? least.cost() : relaxed.cost()) - portsThere)
                        : OptionalDouble.empty(),
                none, least.within() ? scarce(relaxed.prices()) : List.of(), electricShort(best.plan));
    }

    private double[] leastShares() {
        return PlanProblem.portShares(portCosts(), aim.ports().busesPerPort());
    }

    private int portsBefore() {
        return before.plan().ports().stream().filter(p -> p.year() < aim.firstYear()).mapToInt(PlanInput.PortPurchase::count).sum();
    }

    private Candidate search(PlanEnergyPrices prices, int[] first) {
        List<Candidate> seen = new ArrayList<>(List.of(evaluated(choices.steps(first), share -> progress.part(CHOICES_PARTS, PARTS).at(1))));
        double[] room = PlanProblem.room(left);
        boolean going = true;
        for (int round = 1; round < MOST_ROUNDS && going; round++) {
            Progress ofRound = progress.part(CHOICES_PARTS + round, PARTS);
            ofRound.at(0);
            Candidate last = seen.get(seen.size() - 1);
            tighten(room, last.plan);
            ChoiceProblem likely = problem.at(prices.of(last.plan, left, prices.least()), likelyShares(), room);
            ChoiceBound bound = ChoiceBound.of(likely, ofRound.part(0, 2));
            List<PlanInput.Replacement> steps = choices.steps(ChoiceSearch.of(likely, bound, List.of(), ofRound.part(1, 2)).picks());
            going = seen.stream().noneMatch(c -> c.steps.equals(steps));
            if (going) {
                seen.add(evaluated(steps, share -> ofRound.at(1)));
            }
        }
        return seen.stream().min(Comparator.comparingLong((Candidate c) -> electricShort(c.plan))
                .thenComparingLong(c -> BudgetProbe.Probed.of(c.plan).excessCents())
                .thenComparingDouble(c -> c.plan.presentCostAfterFinancing())).orElseThrow();
    }

    private double[] likelyShares() {
        return Arrays.stream(portCosts()).map(cost -> cost / aim.ports().busesPerPort()).toArray();
    }

    /** Leaves less room in years that came out above the cap, because ports and bills fall there. */
    private static void tighten(double[] room, PlanResult plan) {
        plan.finance().budget().forEach(y -> room[y.year()] -= y.aboveCap().orElse(0));
    }

    /** @param stop ends it when nobody wants it any more */
    private Candidate evaluated(List<PlanInput.Replacement> steps, Progress stop) {
        List<PlanInput.Replacement> all = new ArrayList<>(withoutDecided().replacements());
        all.addAll(steps);
        all.sort(Comparator.comparingInt(PlanInput.Replacement::year));
        PlanInput plan = before.plan().with(all, ports(steps));
        return new Candidate(steps,
                PlanEvaluation.of(study, plan, result.duty(), result.figures(), result.fits(), before.yardComparison().memory(), stop));
    }

    private List<PlanInput.PortPurchase> ports(List<PlanInput.Replacement> steps) {
        FillRule rule = new FillRule(FillRule.Pace.ALL_BY, 1, aim.firstYear(), aim.lastYear(), true, aim.roles(), aim.ports());
        List<PlanInput.PortPurchase> ports = new ArrayList<>(
                before.plan().ports().stream().filter(p -> p.year() < aim.firstYear()).toList());
        new FilledPorts(study, withoutDecided(), rule, steps.stream()
                .map(s -> new PlanFilling.Step(s.year(), s.place(), s.newType().getAsInt())).toList()).bought()
                .forEach(p -> ports.add(new PlanInput.PortPurchase(p.year(), port(), p.count(), portPrices.get(p.year()).payers)));
        return ports;
    }

    private PlanInput withoutDecided() {
        Set<Integer> decided = Set.copyOf(choices.places());
        return before.plan().with(before.plan().replacements().stream().filter(r -> !decided.contains(r.place())).toList());
    }

    private int electricShort(PlanResult plan) {
        return aim.goal().map(g -> Math.max(0, g.count() - FleetYear.of(study, plan.fleet()).get(g.year()).electric())).orElse(0);
    }

    private List<BestPlan.NoBound> noBound(PlanEnergyPrices prices, ChoiceSearch.Found least) {
        List<BestPlan.NoBound> reasons = new ArrayList<>();
        add(study.rules().taxes().rate() > 0, BestPlan.NoBound.TAXED, reasons);
        add(!study.funding().aids().isEmpty(), BestPlan.NoBound.OPERATING_AID, reasons);
        add(!study.funding().credits().isEmpty(), BestPlan.NoBound.ENERGY_CREDITS, reasons);
        add(!least.within(), BestPlan.NoBound.NOTHING_WITHIN, reasons);
        add(study.depot().metering().shared() || left.fleet().years().stream()
                .anyMatch(v -> study.types().get(v.vehicle().type()).electric().isPresent()), BestPlan.NoBound.SHARED_PORTS_OR_METER, reasons);
        boolean capped = before.plan().payment().yearlyCap().isPresent();
        add(capped && (!aim.programmes().isEmpty() || !left.finance().debts().isEmpty()), BestPlan.NoBound.MONEY_MOVES_UNDER_CAP, reasons);
        add(aim.programmes().size() > PlaceChoices.MOST_IN_SETS || left.plan().replacements().stream()
                .anyMatch(r -> r.programmes().stream().anyMatch(aim.programmes()::contains)), BestPlan.NoBound.SHARED_PROGRAMMES, reasons);
        add(prices.leastPerKwh() < 0 || !study.depot().metering().tariff().addsUp(), BestPlan.NoBound.TARIFF, reasons);
        return reasons;
    }

    private static void add(boolean holds, BestPlan.NoBound reason, List<BestPlan.NoBound> reasons) {
        if (holds) {
            reasons.add(reason);
        }
    }

    private List<BestPlan.Scarce> scarce(double[] prices) {
        List<BestPlan.Scarce> scarce = new ArrayList<>();
        for (int year = 0; year < study.years(); year++) {
            add(BestPlan.Kind.CAP, OptionalInt.of(year), prices[year], scarce);
        }
        for (int p = 0; p < aim.programmes().size(); p++) {
            add(BestPlan.Kind.PROGRAMME, OptionalInt.of(aim.programmes().get(p)), prices[problem.programme(p)], scarce);
        }
        add(BestPlan.Kind.GOAL, OptionalInt.empty(), prices[problem.goal()], scarce);
        return scarce;
    }

    private static void add(BestPlan.Kind kind, OptionalInt of, double worth, List<BestPlan.Scarce> scarce) {
        if (worth > 0) {
            scarce.add(new BestPlan.Scarce(kind, of, worth));
        }
    }
}
