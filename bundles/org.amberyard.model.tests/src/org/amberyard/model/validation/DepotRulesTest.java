package org.amberyard.model.validation;

import java.util.Collections;
import org.amberyard.model.SmallStudy;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.BuildingMonth;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.LoadDayKind;
import org.amberyard.model.depot.ServiceUpgrade;
import org.junit.jupiter.api.Test;

class DepotRulesTest {
    private final SmallStudy small = new SmallStudy();
    private final Depot depot = small.study.getDepot();

    private void addBills() {
        for (Month month : Month.VALUES) {
            BuildingMonth bill = DepotFactory.eINSTANCE.createBuildingMonth();
            bill.setMonth(month);
            bill.setEnergyKwh(20_000);
            bill.setPeakKw(60);
            depot.getBuildingMonths().add(bill);
        }
    }

    private BuildingLoadDay addDay(LoadDayKind kind, int steps) {
        BuildingLoadDay day = DepotFactory.eINSTANCE.createBuildingLoadDay();
        day.setDayKind(kind);
        day.setMeanKw(String.join(" ", Collections.nCopies(steps, "20")));
        day.setPeakDayKw(day.getMeanKw());
        depot.getBuildingLoadDays().add(day);
        return day;
    }

    @Test
    void billsAndIntervalDataTogetherAreFine() {
        addBills();
        addDay(LoadDayKind.WEEKDAY, 96);
        addDay(LoadDayKind.WEEKEND, 24);
        Said.of(small);
    }

    @Test
    void missingMonthsOfTheBuildingAreNamed() {
        addBills();
        depot.getBuildingMonths().subList(0, 2).clear();
        Said.of(small, "ERROR: Depot Depot: the building’s load lacks January, February; import the data of a whole year, or enter "
                + "the bills of these months.");
    }

    @Test
    void eachDayOfTheBuildingAppearsOnce() {
        addBills();
        addDay(LoadDayKind.WEEKDAY, 96);
        addDay(LoadDayKind.WEEKDAY, 96);
        depot.getBuildingMonths().get(11).setMonth(Month.JANUARY);
        Said.of(small, "ERROR: Depot Depot: the building’s load lacks December; import the data of a whole year, or enter the bills "
                + "of these months.",
                "ERROR: Building month January: it appears more than once; keep one.",
                "ERROR: Building load day January weekday: it appears more than once; keep one.");
    }

    @Test
    void seriesHaveEqualStepsAndSensibleLoads() {
        addBills();
        BuildingLoadDay day = addDay(LoadDayKind.WEEKDAY, 23);
        day.setPeakDayKw("-1 " + String.join(" ", Collections.nCopies(23, "20")));
        addDay(LoadDayKind.WEEKEND, 24).setMeanKw("twenty");
        String again = "; import the meter's data again or correct it.";
        Said.of(small, "ERROR: Building load day January weekday: mean loads: there are 23 numbers but there must be 24, 48 or 96, "
                + "from midnight to midnight" + again,
                "ERROR: Building load day January weekday: loads of the peak day: a load is -1 kW but must be 0 to 50000 kW" + again,
                "ERROR: Building load day January weekend: mean loads: number 1 is “twenty”, which is no number" + again);
    }

    @Test
    void stepsMakeUpAnHour() {
        depot.setStepMin(25);
        Said.of(small, "ERROR: Depot Depot: time step is 25 min; it must be 5, 10, 15, 20, 30 or 60 min.");
    }

    /** The hours that are typed are kept by one policy alone. */
    @Test
    void hoursOfChargingCountUnderTheirPolicyOnly() {
        depot.setChargeWindowStartMin(1260);
        Said.of(small, "WARNING: Depot Depot: the hours of charging, 21:00 to 5:15, count under “at a set time” only; under “spread to departure” buses "
                + "charge whenever they are plugged in.");
        depot.setChargingPolicy(ChargingPolicy.SET_TIME);
        Said.of(small);
    }

    @Test
    void anUpgradeEnlargesTheService() {
        ServiceUpgrade upgrade = DepotFactory.eINSTANCE.createServiceUpgrade();
        upgrade.setName("Transformer");
        depot.getUpgrades().add(upgrade);
        Said.of(small);
        upgrade.setTransformerKva(225);
        upgrade.setBreakerA(600);
        Said.of(small, "ERROR: Service upgrade Transformer: transformer after is 225 kVA, below the 300 kVA of today; enter the "
                + "rating after the upgrade.",
                "ERROR: Service upgrade Transformer: main breaker after is 600 A, below the 800 A of today; enter the rating after "
                        + "the upgrade.");
    }
}
