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
    private final PlaceProbe probe;
    /** Present cost of no place and no more than one port. */
    private final double withoutPort;
    private final PlaceChoices choices;
    private final PlanResult left;
    private final PlanProblem problem;
    private final List<PortPrice> portPrices;

    /** What one more port costs at present, and who pays a part. */
    private record PortPrice(double cost, List<Integer> payers) {
    }

    /** What costs the least by a problem that leaves out some of what a plan costs. */
    private record Lower(ChoiceBound relaxed, ChoiceSearch.Found found) {
        static Lower of(ChoiceProblem problem, Progress progress) {
            ChoiceBound relaxed = ChoiceBound.of(problem, progress.part(0, 2));
            return new Lower(relaxed, ChoiceSearch.of(problem, relaxed, List.of(), progress.part(1, 2)));
        }

        double cost() {
            return found.proven() ? found.cost() : relaxed.cost();
        }
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
        this.probe = new PlaceProbe(study, before.plan(), result.duty(), result.figures(), port());
        this.choices = PlaceChoices.of(result, before.plan(), aim, probe, progress.part(0, 2));
        if (choices.places().isEmpty()) {
            throw new IllegalArgumentException("Plan " + before.name() + " has no place to decide on");
        }
        this.withoutPort = probe.noPort().presentCost();
        this.portPrices = IntStream.range(0, study.years()).mapToObj(y -> portPrice(y)).toList();
        this.left = evaluated(List.of(), share -> progress.part(0, 2).at(1)).plan;
        this.problem = new PlanProblem(study, left, aim, choices);
    }

    private int port() {
        return aim.ports().port().getAsInt();
    }

    private PortPrice portPrice(int year) {
        PlaceProbe.Probed paid = probe.port(year, aim.programmes().stream()
                .filter(p -> study.funding().programmes().get(p).paysIn(year)).toList());
        return new PortPrice(paid.presentCost() - withoutPort, paid.paying().stream().sorted().toList());
    }

    private double[] portCosts() {
        return portPrices.stream().mapToDouble(PortPrice::cost).toArray();
    }

    BestPlan answer() {
        PlanEnergyPrices prices = new PlanEnergyPrices(study);
        Progress first = progress.part(CHOICES_PARTS, PARTS);
        Lower within = Lower.of(problem.at(prices.least(), leastShares(), PlanProblem.room(left)), first.part(0, 2));
        Lower least = capLeftOut() ? Lower.of(problem.at(prices.least(), leastShares(), endless()), first.part(1, 2)) : within;
        Candidate best = search(prices, within.found.picks());
        List<BestPlan.NoBound> none = noBound(prices, least.found);
        return new BestPlan(best.plan, best.steps, choices.places(), before.presentCostAfterFinancing(), CapLevelling.Unmet.of(before),
                none.isEmpty() ? OptionalDouble.of(leftAtLeast(prices) + least.cost()) : OptionalDouble.empty(), none, capLeftOut(),
                within.found.within() ? scarce(within.relaxed.prices()) : List.of(), electricShort(best.plan));
    }

    /**
     * Awards and debts bring money to other years than those of the steps, and ports and bills that are shared make room in years in which the
     * plan left to the rule has none, so that a plan may keep a cap that its steps by themselves break.
     */
    private boolean capLeftOut() {
        return before.plan().payment().yearlyCap().isPresent() && (!aim.programmes().isEmpty() || !left.finance().debts().isEmpty() || shares());
    }

    /** True where electric buses on which nothing is decided, or the building, share ports or bill with those that are decided on. */
    private boolean shares() {
        return study.depot().metering().shared() || left.fleet().years().stream()
                .anyMatch(v -> study.types().get(v.vehicle().type()).electric().isPresent());
    }

    /**
     * What everything that is not decided on costs at least, whatever is decided: as in the plan in which all places are left to the rule, but
     * ports that stand there may be shared, and so may ports and bill of electric buses that stay.
     */
    private double leftAtLeast(PlanEnergyPrices prices) {
        double portsThere = aim.ports().busesPerPort() * leastShares()[0] * portsBefore();
        double shared = shares() ? prices.aboveLeast(left) + portsOfThoseThatStay() : 0;
        return left.presentCostAfterFinancing() - portsThere - shared;
    }

    /** Ports that the search buys for electric buses on which it does not decide, at what they cost when no programme pays a part. */
    private double portsOfThoseThatStay() {
        return left.plan().ports().stream().filter(p -> p.year() >= aim.firstYear())
                .mapToDouble(p -> p.count() * (probe.port(p.year(), List.of()).presentCost() - withoutPort)).sum();
    }

    private double[] endless() {
        double[] room = new double[study.years()];
        Arrays.fill(room, Double.POSITIVE_INFINITY);
        return room;
    }

    private double[] leastShares() {
        return PlanProblem.portShares(portCosts(), aim.ports().busesPerPort());
    }

    private int portsBefore() {
        return before.plan().ports().stream().filter(p -> p.year() < aim.firstYear()).mapToInt(PlanInput.PortPurchase::count).sum();
    }

    private Candidate search(PlanEnergyPrices prices, int[] first) {
        List<Candidate> seen = new ArrayList<>(List.of(evaluated(choices.steps(first), share -> progress.part(CHOICES_PARTS, PARTS).at(1))));
        seen.add(0, evaluated(stepsBefore(), share -> progress.part(CHOICES_PARTS, PARTS).at(1)));
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

    /** What the plan does as it is in the places that are decided on; what is found is not to break the cap further. */
    private List<PlanInput.Replacement> stepsBefore() {
        return before.plan().replacements().stream().filter(r -> choices.places().contains(r.place())).toList();
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
