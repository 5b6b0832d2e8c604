package org.amberyard.model.meta;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.plans.Plan;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The steps of plans that fall in a year: replacements, purchases of ports, orders of works, one-off costs. */
public final class DatedSteps {
    private static final String YEAR = "year";

    private DatedSteps() {
    }

    /** Those of a plan, kind by kind, buses first. */
    public static List<Sourced> of(Plan plan) {
        List<Sourced> all = new ArrayList<>(plan.getReplacements());
        all.addAll(plan.getPortPurchases());
        all.addAll(plan.getWorkOrders());
        all.addAll(plan.getOneOffCosts());
        return all;
    }

    /** The field that holds the year of a step. */
    public static EStructuralFeature yearField(Sourced step) {
        return step.eClass().getEStructuralFeature(YEAR);
    }

    /** The fiscal year of a step. */
    public static int year(Sourced step) {
        return (int) step.eGet(yearField(step));
    }
}
