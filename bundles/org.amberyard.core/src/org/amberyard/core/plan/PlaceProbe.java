package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.Budget;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.core.yard.YardYear;

/**
 * What a place in the fleet costs by itself, with a step or without: the same roll-forward, upkeep, awards, debts and prices as in a
 * whole plan, but of this place alone, with programmes that never run out and without an electric bill. So the places of a plan can
 * be weighed one by one. The other places stay empty, so that each keeps its turn in the shop.
 */
final class PlaceProbe {
    private final StudyInput study;
    private final PlanInput plan;
    private final DutyTable duty;
    private final StudyFigures figures;
    private final int port;
    private final FundingInput generous;
    private final List<YardYear> idle;

    /**
     * A place by itself.
     *
     * @param presentCost present cost after financing, without the electric bill
     * @param appropriation what must be appropriated by year, without the electric bill, money of the year
     * @param batteryKwh energy that charging must bring by year, kWh
     * @param firstYear year in which a bus first comes; empty when none does
     * @param paying programmes that pay for a purchase
     */
    record Probed(double presentCost, double[] appropriation, double[] batteryKwh, OptionalInt firstYear, Set<Integer> paying) {
    }

    /** @param port type of the ports at which electric buses charge */
    PlaceProbe(StudyInput study, PlanInput plan, DutyTable duty, StudyFigures figures, int port) {
        this.study = study;
        this.plan = plan;
        this.duty = duty;
        this.figures = figures;
        this.port = port;
        this.generous = generous(study.funding());
        StudyInput empty = study.with(List.of(), generous);
        this.idle = new PlanYards(empty, duty, new PortFleet(study.depot(), ports(0, 0, List.of())))
                .all(new FleetHistory(List.of(), List.of(), List.of(), List.of()), new YardMemory(), Progress.NONE);
    }

    private static FundingInput generous(FundingInput funding) {
        return new FundingInput(funding.programmes().stream().map(PlaceProbe::generous).toList(), funding.exclusions(),
                funding.credits(), funding.aids(), funding.declared());
    }

    private static Programme generous(Programme p) {
        return new Programme(p.name(), p.kind(), p.priority(), p.firstYear(), p.lastYear(), p.probability(), p.offer(),
                Budget.ofBuses(Integer.MAX_VALUE), p.match(), p.conditions(), p.payout());
    }

    /** One port from the first year on, and some more from a later one. */
    private List<PlanInput.PortPurchase> ports(int year, int more, List<Integer> programmes) {
        PlanInput.PortPurchase first = new PlanInput.PortPurchase(0, port, 1, List.of());
        return more == 0 ? List.of(first) : List.of(first, new PlanInput.PortPurchase(year, port, more, programmes));
    }

    /** A place with a step, or left to the rule of its type. */
    Probed of(int place, Optional<PlanInput.Replacement> step) {
        List<BusInput> alone = IntStream.range(0, study.buses().size())
                .mapToObj(p -> p == place ? study.buses().get(p) : study.buses().get(p).from(study.years())).toList();
        return probed(study.with(alone, generous), plan.only(step.stream().toList(), ports(0, 0, List.of())));
    }

    /** One more port, bought in a year, with some programmes asked; without the bus that charges at it. */
    Probed port(int year, List<Integer> programmes) {
        return probed(study.with(List.of(), generous), plan.only(List.of(), ports(year, 1, programmes)));
    }

    /** No more than the one port. */
    Probed noPort() {
        return probed(study.with(List.of(), generous), plan.only(List.of(), ports(0, 0, List.of())));
    }

    private Probed probed(StudyInput alone, PlanInput steps) {
        PlanCourse course = PlanCourse.of(alone, steps, duty, figures, new PortFleet(alone.depot(), steps.ports()), driven -> idle);
        PlanCosts costs = PlanCosts.of(alone, steps, course);
        PlanFinance finance = PlanFinance.of(alone, steps, course.fleet(), costs);
        double[] batteryKwh = new double[study.years()];
        course.fleet().years().stream().filter(v -> study.types().get(v.vehicle().type()).electric().isPresent())
                .forEach(v -> batteryKwh[v.year()] += v.use().batteryKwh());
        return new Probed(costs.ledger().presentValue() + finance.ledger().presentValue(),
                IntStream.range(0, study.years()).mapToDouble(y -> finance.budget().get(y).appropriation()).toArray(), batteryKwh,
                course.fleet().events().stream().filter(FleetEvent.Bought.class::isInstance).mapToInt(FleetEvent::year).findFirst(),
                costs.funding().awards().lines().stream().flatMap(l -> l.awards().stream()).filter(a -> a.paid() > 0)
                        .map(Award::programme).collect(Collectors.toSet()));
    }
}
