package org.amberyard.exchange.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.vehicles.VehicleType;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What a row of a replacement schedule says.
 *
 * @param row number of the row
 * @param plan plan of the step
 * @param bus place in the fleet
 * @param action what happens
 * @param year fiscal year of the step
 * @param type type bought; empty for none
 * @param programmes programmes that pay; empty where the sheet has no column of them
 * @param others values of the other fields that the sheet has columns of; an empty cell is the value of a new step
 */
record PlanRow(int row, Plan plan, Bus bus, PlanAction action, int year, Optional<VehicleType> type, Optional<List<Programme>> programmes,
        Map<EStructuralFeature, Object> others) {
}
