package org.amberyard.testsupport;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.finance.Amortisation;
import org.amberyard.core.finance.Lease;
import org.amberyard.core.finance.Repayment;
import org.amberyard.core.finance.TaxRules;
import org.amberyard.core.plan.Financing;
import org.amberyard.core.plan.FleetRules;
import org.amberyard.core.plan.PaymentPlan;
import org.amberyard.core.plan.PlanInput;
import org.amberyard.core.plan.StudyInput;

/** Districts whose last plan is paid for by a loan and a lease under a yearly cap; all terms are made up. */
public final class SampleFinance {
    /** Most that may be appropriated in a year. */
    public static final double CAP = 90_000;

    private SampleFinance() {
    }

    /** A study whose last plan borrows four fifths of its buses and leases its ports and works. */
    public static StudyInput financed(StudyInput study) {
        List<PlanInput> plans = new ArrayList<>(study.plans());
        int last = plans.size() - 1;
        plans.set(last, plans.get(last).paid(new PaymentPlan(List.of(
                new Financing("Bank loan", Financing.Covers.BUSES, 0.8, 0, study.years() - 1,
                        new Amortisation(Repayment.LEVEL, 0.05, 8, 2, false, 0, 0.01)),
                new Financing("Port lease", Financing.Covers.PORTS_AND_WORKS, 1, 0, study.years() - 1,
                        new Lease(0.06, 5, 12, true, 0.1, 0))),
                OptionalDouble.of(CAP))));
        return with(study, plans, study.rules());
    }

    /** A study whose operator is taxed. */
    public static StudyInput taxed(StudyInput study, double rate) {
        FleetRules old = study.rules();
        TaxRules taxes = new TaxRules(rate, TaxRules.NONE.buses(), TaxRules.NONE.infrastructure());
        return with(study, study.plans(), new FleetRules(old.spareCoverShare(), old.insuranceShare(), old.reserveShare(),
                old.upkeep(), taxes));
    }

    private static StudyInput with(StudyInput study, List<PlanInput> plans, FleetRules rules) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), study.depot(), study.prices(), study.funding(), study.air(), rules, plans,
                study.baseline(), study.trips());
    }
}
