package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.funding.EnergyCredit;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;
import org.amberyard.core.yard.YardYear;

/** What low-carbon credits bring to each bus: the energy that the yard's ports put into it, at the credit's price. */
final class CreditFlows {
    private final StudyInput study;
    private final List<FundingFlow> flows = new ArrayList<>();

    private CreditFlows(StudyInput study) {
        this.study = study;
    }

    static List<FundingFlow> of(StudyInput study, List<YardYear> yards) {
        CreditFlows credits = new CreditFlows(study);
        for (EnergyCredit credit : study.funding().credits()) {
            for (int year = 0; year < yards.size(); year++) {
                if (credit.paysIn(year)) {
                    credits.add(credit, year, yards.get(year));
                }
            }
        }
        return credits.flows;
    }

    private void add(EnergyCredit credit, int year, YardYear yard) {
        Derivation price = price(credit, year);
        for (int bus = 0; bus < yard.busKwh().size(); bus++) {
            double kwh = yard.busKwh().get(bus) - yard.missingKwh().get(bus);
            if (kwh > 0) {
                Derivation energy = Derivation.of("energy of " + yard.input().buses().get(bus).name() + " at the meter", kwh, "kWh",
                        "charged in the yard in the year");
                flows.add(new FundingFlow(FundingFlow.Kind.CREDIT, credit.name(), yard.input().buses().get(bus).place(), year,
                        Derivation.product("credits of " + credit.name(), Derivation.MONEY, energy, price)));
            }
        }
    }

    /** Price of a year in money of the time of payment. */
    private Derivation price(EnergyCredit credit, int year) {
        double time = study.money().time(FundingFlow.Kind.CREDIT.category(), year);
        return Derivation.product("price of the credits in the year", "money/kWh",
                Derivation.input("price of the credits", credit.perKwh(), "money/kWh",
                        new InputRef("LowCarbonCredit", credit.name(), "pricePerKwh")),
                Derivation.of("price over that of the base date, constant money", credit.path().factor(year, time), "",
                        "path of the price"),
                Derivation.of("general inflation to the time of payment", study.money().rates().inflationFactor(time), "",
                        "(1 + inflation) to the years"));
    }
}
