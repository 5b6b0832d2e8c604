package org.amberyard.workbench.help;

import java.util.Map;
import java.util.Optional;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.language.Words;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the page of the help that speaks of what is in focus: a field, or a view. */
public final class HelpHere extends AbstractHandler {
    private static final String PREFIX = "org.amberyard.workbench.";
    private static final Map<String, String> PAGES = Map.ofEntries(
            Map.entry("rangeMargin", "duty"), Map.entry("rangeByMonth", "duty"), Map.entry("chargeThroughDay", "duty"),
            Map.entry("packCapacity", "duty"), Map.entry("energyByCause", "energy"), Map.entry("consumptionByTemperature", "energy"),
            Map.entry("dayLoad", "charging"), Map.entry("portOccupancy", "charging"), Map.entry("electricBill", "charging"),
            Map.entry("serviceLoad", "charging"), Map.entry("chargingPolicies", "charging"), Map.entry("portCount", "charging"),
            Map.entry("annualCost", "money"), Map.entry("cumulativeCost", "money"), Map.entry("planDifference", "money"),
            Map.entry("budgetByYear", "money"), Map.entry("upkeepByCause", "money"), Map.entry("shopHours", "money"),
            Map.entry("emissions", "grants"), Map.entry("fleetByYear", "administrator"));

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Optional<EStructuralFeature> field = FeatureTable.inFocus().flatMap(FeatureTable::field);
        IWorkbenchPart part = HandlerUtil.getActivePart(event);
        String page = field.map(f -> HelpTopics.ofFields(f.getEContainingClass().getName())).orElseGet(() -> pageOf(part));
        try {
            HelpView view = (HelpView) HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().showView(HelpView.ID);
            view.show(page, field.map(f -> Words.field(f).label()).orElse(""));
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
        return null;
    }

    private static String pageOf(IWorkbenchPart part) {
        String id = part == null ? "" : part.getSite().getId();
        return PAGES.getOrDefault(id.startsWith(PREFIX) ? id.substring(PREFIX.length()) : id, "start");
    }
}
