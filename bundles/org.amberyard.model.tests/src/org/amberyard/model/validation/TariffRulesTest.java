package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffChargeKind;
import org.amberyard.model.depot.TariffDays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TariffRulesTest {
    private final SmallStudy small = new SmallStudy();
    private final ScheduledTariff tariff = DepotFactory.eINSTANCE.createScheduledTariff();

    @BeforeEach
    void add() {
        tariff.setName("X");
        small.study.getDepot().getAlternativeTariffs().add(tariff);
    }

    private TariffCharge energy(String name, TariffDays days, int fromHour, int toHour, double price) {
        TariffCharge row = DepotFactory.eINSTANCE.createTariffCharge();
        row.setCharge(name);
        row.setDays(days);
        row.setFromMin(60 * fromHour);
        row.setToMin(60 * toHour);
        row.setPricePerKwh(price);
        tariff.getCharges().add(row);
        return row;
    }

    private TariffCharge allHours() {
        return energy("Energy", TariffDays.ALL, 0, 0, 0.1);
    }

    private TariffCharge demand(String name) {
        TariffCharge row = DepotFactory.eINSTANCE.createTariffCharge();
        row.setCharge(name);
        row.setKind(TariffChargeKind.DEMAND);
        row.setPricePerKw(5);
        tariff.getCharges().add(row);
        return row;
    }

    @Test
    void aTariffThatPricesEachHourOnceIsLeftAlone() {
        energy("Peak", TariffDays.WEEKDAYS, 14, 20, 0.2);
        energy("Rest", TariffDays.WEEKDAYS, 20, 14, 0.1);
        energy("Rest", TariffDays.WEEKENDS_AND_HOLIDAYS, 0, 0, 0.1);
        demand("Demand").setRatchetShare(0.6);
        Said.of(small);
    }

    @Test
    void aPriceFitsItsKind() {
        allHours().setPricePerKw(3);
        Said.of(small, "ERROR: Tariff charge Energy of tariff by hours X: price per kW is 3 money/kW/month but the kind is energy, "
                + "whose price is its price per kWh; clear it or choose another kind.");
    }

    @Test
    void energyCostsSomethingButRidersMayGiveBack() {
        TariffCharge rider = energy("Rider", TariffDays.ALL, 0, 0, -0.01);
        rider.setKind(TariffChargeKind.RIDER_PER_KWH);
        allHours().setPricePerKwh(-0.1);
        Said.of(small, "ERROR: Tariff charge Energy of tariff by hours X: price per kWh is -0.1 money/kWh; only riders may be "
                + "negative.");
    }

    @Test
    void ratchetsBlocksAndYearsBelongTogether() {
        allHours().setRatchetShare(0.5);
        TariffCharge demand = demand("Demand");
        demand.setFromKwh(100);
        demand.setFirstContractYear(6);
        demand.setLastContractYear(5);
        Said.of(small, "ERROR: Tariff charge Energy of tariff by hours X: ratchet is 0.5 share but only demand charges have a "
                + "ratchet; clear it.",
                "ERROR: Tariff charge Demand, from 100 kWh, years 6 to 5 of tariff by hours X: block from is 100 kWh but only "
                        + "charges per energy have blocks; clear it.",
                "ERROR: Tariff charge Demand, from 100 kWh, years 6 to 5 of tariff by hours X: to year of service is 5, before "
                        + "the first, 6; enter a later one.",
                "ERROR: Tariff charge Demand, from 100 kWh, years 6 to 5 of tariff by hours X: its lowest block does not start at "
                        + "0; add the row of the energy below.");
    }

    @Test
    void rowsOfOneChargeAgreeOnItsRatchet() {
        allHours();
        TariffCharge summer = demand("Demand");
        summer.setFirstMonth(Month.JUNE);
        summer.setLastMonth(Month.SEPTEMBER);
        summer.setRatchetShare(0.8);
        TariffCharge winter = demand("Demand");
        winter.setFirstMonth(Month.OCTOBER);
        winter.setLastMonth(Month.MAY);
        Said.of(small, "ERROR: Tariff charge Demand, October to May of tariff by hours X: its ratchet differs from that of Demand, "
                + "June to September, but a charge has one; give all its rows the same share and months.");
        winter.setRatchetShare(0.8);
        Said.of(small);
        winter.setRatchetMonths(summer.getRatchetMonths() - 1);
        Said.of(small, "ERROR: Tariff charge Demand, October to May of tariff by hours X: its ratchet differs from that of Demand, "
                + "June to September, but a charge has one; give all its rows the same share and months.");
    }

    @Test
    void rowsOfOneChargeAgreeOnItsPrice() {
        allHours();
        TariffCharge summer = demand("Demand");
        summer.setFirstMonth(Month.JUNE);
        summer.setLastMonth(Month.SEPTEMBER);
        TariffCharge winter = demand("Demand");
        winter.setPricePerKw(4);
        winter.setFirstMonth(Month.OCTOBER);
        winter.setLastMonth(Month.MAY);
        Said.of(small);
        winter.setLastMonth(Month.JUNE);
        Said.of(small, "ERROR: Tariff charge Demand, October to June of tariff by hours X: its price differs from that of Demand, "
                + "June to September; give charges of different prices different names.");
    }

    @Test
    void blocksAreRowsOfTheSameHours() {
        allHours();
        energy("Energy", TariffDays.ALL, 0, 0, 0.08).setFromKwh(1000);
        Said.of(small);
        energy("Energy", TariffDays.ALL, 0, 0, 0.07).setFromKwh(1000);
        Said.of(small, "ERROR: Tariff charge Energy, from 1000 kWh of tariff by hours X: the row stands there twice; delete one.");
    }

    @Test
    void blocksMustNotChangePlaces() {
        allHours();
        energy("Energy", TariffDays.ALL, 0, 0, 0.08).setFromHoursOfUse(200);
        TariffCharge last = energy("Energy", TariffDays.ALL, 0, 0, 0.07);
        last.setFromKwh(1000);
        last.setFromHoursOfUse(200);
        Said.of(small);
        last.setFromHoursOfUse(100);
        Said.of(small, "ERROR: Tariff charge Energy of tariff by hours X: a block starts at more energy but at fewer hours of use than "
                + "another, so that they may change places; correct one.");
    }

    @Test
    void sharesApplyAtAllTimes() {
        allHours();
        TariffCharge franchise = energy("Franchise", TariffDays.WEEKDAYS, 0, 0, 0);
        franchise.setKind(TariffChargeKind.RIDER_SHARE);
        franchise.setShare(0.05);
        Said.of(small, "ERROR: Tariff charge Franchise, weekdays of tariff by hours X: a rider that is a share of charges applies at "
                + "all times; clear its months, days, hours and years.");
    }

    @Test
    void theTariffInUseHasANameOfItsOwn() {
        allHours();
        tariff.setName("Flat tariff");
        Said.of(small, "ERROR: Tariff by hours Flat tariff: the tariff in use has the same name; give each its own.");
    }
}
