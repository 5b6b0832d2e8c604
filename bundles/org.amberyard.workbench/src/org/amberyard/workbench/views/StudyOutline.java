package org.amberyard.workbench.views;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.meta.DatedSteps;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.routes.Route;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** The lines of the outline of a study, in the order of the editor's pages. */
final class StudyOutline {

    private StudyOutline() {
    }

    static List<OutlineNode> of(Study study) {
        List<OutlineNode> lines = new ArrayList<>();
        addPlace(lines, study);
        addFleet(lines, study);
        if (study.getDepot() != null) {
            addDepot(lines, study.getDepot());
        }
        addMoney(lines, study);
        lines.add(OutlineNode.of(Messages.Outline_plans, PageKind.PLANS, study.getPlans(), StudyOutline::steps));
        lines.add(OutlineNode.of(Messages.Outline_actuals, PageKind.ACTUALS, study.getActuals()));
        lines.add(OutlineNode.of(Messages.Outline_narratives, PageKind.NARRATIVE, study.getNarratives()));
        lines.add(OutlineNode.of(Messages.Outline_chartNotes, PageKind.CHART_NOTES, study.getChartNotes()));
        lines.add(OutlineNode.of(Messages.Outline_busRecords, PageKind.ACTUALS, study.getBusRecords()));
        return lines;
    }

    private static void addPlace(List<OutlineNode> lines, Study study) {
        addSingle(lines, Messages.Outline_settings, study.getSettings());
        if (study.getSite() != null) {
            addSingle(lines, Words.kind(study.getSite().eClass()), study.getSite());
            lines.add(OutlineNode.of(Messages.Outline_climate, PageKind.CLIMATE, study.getSite().getClimate()));
        }
        addSingle(lines, Messages.Outline_emissions, study.getEmissionFactors());
        lines.add(OutlineNode.of(Messages.Outline_calendars, PageKind.CLIMATE, study.getCalendars()));
    }

    private static void addFleet(List<OutlineNode> lines, Study study) {
        lines.add(OutlineNode.of(Messages.Outline_routes, PageKind.ROUTES, study.getRoutes(), Route::getRuns));
        lines.add(OutlineNode.of(Messages.Outline_buses, PageKind.BUSES, study.getBuses()));
        lines.add(OutlineNode.of(Messages.Outline_trips, PageKind.TRIPS, study.getTrips()));
        lines.add(OutlineNode.of(Messages.Outline_logs, PageKind.MEASUREMENTS, study.getConsumptionLogs()));
        lines.add(OutlineNode.of(Messages.Outline_traces, PageKind.MEASUREMENTS, study.getTraces()));
        lines.add(OutlineNode.of(Messages.Outline_tasks, PageKind.UPKEEP, study.getMaintenanceTasks()));
        lines.add(OutlineNode.of(Messages.Outline_types, PageKind.TYPES, study.getVehicleTypes()));
    }

    private static void addDepot(List<OutlineNode> lines, Depot depot) {
        addSingle(lines, Messages.Outline_service, depot);
        lines.add(OutlineNode.of(Messages.Outline_ports, PageKind.DEPOT, depot.getPortTypes()));
        lines.add(OutlineNode.of(Messages.Outline_works, PageKind.DEPOT, depot.getWorks()));
        lines.add(OutlineNode.of(Messages.Outline_upgrades, PageKind.DEPOT, depot.getUpgrades()));
        addSingle(lines, NLS.bind(Messages.Outline_tariff, Words.name(depot.getTariff())), depot.getTariff());
        lines.add(OutlineNode.of(Messages.Outline_tariffs, PageKind.TARIFFS, depot.getAlternativeTariffs()));
        lines.add(OutlineNode.of(Messages.Outline_building, PageKind.BUILDING, depot.getBuildingMonths()));
    }

    private static void addMoney(List<OutlineNode> lines, Study study) {
        lines.add(OutlineNode.of(Messages.Outline_prices, PageKind.PRICES, study.getPrices()));
        lines.add(OutlineNode.of(Messages.Outline_funding, PageKind.FUNDING, study.getProgrammes()));
        lines.add(OutlineNode.of(Messages.Outline_credits, PageKind.FUNDING, study.getLowCarbonCredits()));
        lines.add(OutlineNode.of(Messages.Outline_aids, PageKind.FUNDING, study.getOperatingAids()));
    }

    private static void addSingle(List<OutlineNode> lines, String label, EObject element) {
        if (element != null) {
            lines.add(OutlineNode.of(label, element));
        }
    }

    private static List<EObject> steps(Plan plan) {
        List<EObject> steps = new ArrayList<>(DatedSteps.of(plan));
        steps.addAll(plan.getFinancing());
        return steps;
    }
}
