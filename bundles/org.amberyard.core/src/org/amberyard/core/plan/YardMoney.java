package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.air.AirFactors;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.tariff.BillParts;
import org.amberyard.core.yard.YardYear;

/**
 * What a year of a yard costs at prices, and what it puts into the air.
 *
 * @param energy energy charges with those for what the yard cannot bring, base-date money
 * @param demand demand charges, base-date money
 * @param fixed fixed charges, base-date money; not counted where they are lifted
 * @param lifted the year itself where a minimum lifts its bills, so that fixed charges follow from the others
 * @param swaps plug swaps
 * @param credits what low-carbon credits take off the costs, money that the study states
 * @param gridKg greenhouse gas of power plants, kg CO2e
 */
record YardMoney(double energy, double demand, double fixed, Optional<YardYear> lifted, double swaps, double credits, double gridKg) {

    /** Of a year of a plan's yard, which takes the place of that of the plan. */
    static YardMoney of(StudyInput study, PlanCourse course, int year, YardYear yard) {
        AirFactors air = study.air().factors();
        double gridKg = air.grid().of(yard.neededKwh(), year, air.warming()).kg(Pollutant.CO2E);
        double credits = credits(study, course.yards(), year, yard);
        if (yard.yardKwh() == 0 && course.ports().count(year) == 0) {
            return new YardMoney(0, 0, 0, Optional.empty(), 0, credits, gridKg);
        }
        BillParts bill = yard.parts();
        double energy = yard.yardKwh() > 0 ? bill.energy() / yard.yardKwh() * yard.neededKwh() : 0;
        boolean minimum = yard.input().metering().tariff().minimum().amount() > 0;
        return new YardMoney(energy, bill.demand(), bill.fixed(), minimum ? Optional.of(yard) : Optional.empty(), yard.swaps(),
                credits, gridKg);
    }

    private static double credits(StudyInput study, List<YardYear> yards, int year, YardYear yard) {
        List<YardYear> others = new ArrayList<>(yards);
        others.set(year, yard);
        List<FundingFlow> flows = CreditFlows.of(study, others).stream().filter(f -> f.year() == year).toList();
        FundingCosts costs = new FundingCosts(study, flows);
        return flows.stream().mapToDouble(costs::stated).sum();
    }
}
