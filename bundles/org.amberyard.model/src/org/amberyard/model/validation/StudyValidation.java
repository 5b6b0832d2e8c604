package org.amberyard.model.validation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EObject;

/** Checks a study against every rule. */
public final class StudyValidation {
    private static final List<Rule> RULES = List.of(
            new RequiredRule(), new RangeRule(), new UniqueNameRule(), new OwnStudyRule(),
            new ClimateRule(), new CalendarRule(),
            new RunOrderRule(), new RunClockRule(), new RunMotionRule(), new DriveTraceRule(),
            new VehicleTypeRule(), new ConsumptionCurveRule(), new EnergyModelRule(),
            new BusRouteRule(), new RouteCoverRule(), new BusYearsRule(), new BusRecordRule(), new OtherDistanceRule(), new VinRule(),
            new LogEnergyRule(), new LogUseRule(), new MaintenanceTaskRule(),
            new TripDateRule(), new TripMotionRule(), new TripBusRule(), new TripDistanceRule(),
            new DepotRule(), new BuildingLoadRule(), new MeterDayRule(), new MeterBillRule(),
            new TariffRule(), new TariffChargeRule(), new TariffPricesRule(),
            new PriceCoverRule(), new PriceYearRule(), new PricePointsRule(), new ActualsRule(), new CentsRule(), new DiscountRateRule(), new WhatIfRule(),
            new TwoInputsRule(),
            new ProgrammeRule(), new AwardStatusRule(), new OperatingMoneyRule(),
            new EngineEmissionRule(), new GridEmissionRule(), new FactorChoiceRule(), new HarmRule(), new PlaceholderRule(),
            new PlansRule(), new PlanYearsRule(), new ReplacementRule(), new UsedBusRule(), new CascadeRule(), new FirstPortRule(), new StandingPortsRule(),
            new StepFundingRule(),
            new FinancingRule(), new FinancedShareRule());

    private final ValueText values;

    /** @param values renders the values in messages */
    public StudyValidation(ValueText values) {
        this.values = values;
    }

    /** What is found, in the order of the elements in the study and for each element in the order of the rules. */
    public List<Finding> check(Study study) {
        Findings findings = new Findings(values);
        RULES.forEach(rule -> rule.check(study, findings));
        Map<EObject, Integer> places = places(study);
        List<Finding> sorted = new ArrayList<>(findings.list());
        sorted.sort(Comparator.comparingInt(f -> places.getOrDefault(f.element(), Integer.MAX_VALUE)));
        return List.copyOf(sorted);
    }

    private static Map<EObject, Integer> places(Study study) {
        Map<EObject, Integer> places = new IdentityHashMap<>();
        Elements.of(study).forEach(element -> places.put(element, places.size()));
        return places;
    }
}
