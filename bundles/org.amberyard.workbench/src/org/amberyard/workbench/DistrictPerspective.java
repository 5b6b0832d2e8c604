package org.amberyard.workbench;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The answer on top, the pictures behind it below, and between them the study that both follow. */
public final class DistrictPerspective implements IPerspectiveFactory {

    static final String ID = "org.amberyard.workbench.district";

    private static final String HEADLINE = "org.amberyard.workbench.headline";
    private static final String OUTLINE = "org.amberyard.workbench.outline";
    private static final String ANNUAL = "org.amberyard.workbench.annualCost";
    private static final String CUMULATIVE = "org.amberyard.workbench.cumulativeCost";
    private static final String CAPACITY = "org.amberyard.workbench.packCapacity";
    private static final String RANGE = "org.amberyard.workbench.rangeMargin";
    private static final String MONTHS = "org.amberyard.workbench.rangeByMonth";
    private static final String DAY = "org.amberyard.workbench.chargeThroughDay";
    private static final String CAUSES = "org.amberyard.workbench.energyByCause";
    private static final String TEMPERATURE = "org.amberyard.workbench.consumptionByTemperature";
    private static final String UPKEEP = "org.amberyard.workbench.upkeepByCause";
    private static final String SHOP = "org.amberyard.workbench.shopHours";
    private static final String LOAD = "org.amberyard.workbench.dayLoad";
    private static final String PORTS = "org.amberyard.workbench.portOccupancy";
    private static final String BILL = "org.amberyard.workbench.electricBill";
    private static final String SERVICE = "org.amberyard.workbench.serviceLoad";
    private static final String EMISSIONS = "org.amberyard.workbench.emissions";
    private static final String POLICIES = "org.amberyard.workbench.chargingPolicies";
    private static final String DIFFERENCE = "org.amberyard.workbench.planDifference";
    private static final String BUDGET = "org.amberyard.workbench.budgetByYear";
    private static final String FLEET = "org.amberyard.workbench.fleetByYear";
    private static final String WHY = "org.amberyard.workbench.why";
    private static final String PORT_COUNT = "org.amberyard.workbench.portCount";
    private static final String FINDINGS = "org.amberyard.workbench.findings";
    private static final String RESULTS = "org.amberyard.workbench.results";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        String editors = layout.getEditorArea();
        layout.setEditorAreaVisible(true);
        layout.addStandaloneView(HEADLINE, false, IPageLayout.TOP, 0.17f, editors);
        layout.getViewLayout(HEADLINE).setCloseable(false);
        IFolderLayout money = layout.createFolder("money", IPageLayout.BOTTOM, 0.555f, editors);
        money.addView(ANNUAL);
        money.addView(CUMULATIVE);
        money.addView(CAPACITY);
        money.addView(RESULTS);
        money.addPlaceholder(DIFFERENCE);
        money.addPlaceholder(BUDGET);
        money.addPlaceholder(FLEET);
        money.addPlaceholder(UPKEEP);
        money.addPlaceholder(SHOP);
        money.addPlaceholder(BILL);
        money.addPlaceholder(SERVICE);
        money.addPlaceholder(POLICIES);
        money.addPlaceholder(EMISSIONS);
        money.addPlaceholder(PORT_COUNT);
        IFolderLayout range = layout.createFolder("range", IPageLayout.RIGHT, 0.52f, "money");
        range.addView(RANGE);
        range.addView(MONTHS);
        range.addView(DAY);
        range.addView(CAUSES);
        range.addView(TEMPERATURE);
        range.addView(FINDINGS);
        range.addPlaceholder(WHY);
        range.addPlaceholder(LOAD);
        range.addPlaceholder(PORTS);
        layout.createFolder("outline", IPageLayout.LEFT, 0.16f, editors).addView(OUTLINE);
    }
}
