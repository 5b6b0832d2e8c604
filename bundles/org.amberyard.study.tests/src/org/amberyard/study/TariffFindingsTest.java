package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.FlatTariff;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffDays;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TariffFindingsTest {
    private final ScheduledTariff tariff = DepotFactory.eINSTANCE.createScheduledTariff();
    private Study study;

    @BeforeEach
    void load() throws Exception {
        study = ExampleStudy.load();
        tariff.setName("X");
    }

    private void energy(String name, TariffDays days, int fromHour, int toHour, double price) {
        TariffCharge row = DepotFactory.eINSTANCE.createTariffCharge();
        row.setCharge(name);
        row.setDays(days);
        row.setFromMin(60 * fromHour);
        row.setToMin(60 * toHour);
        row.setPricePerKwh(price);
        tariff.getCharges().add(row);
    }

    private List<Finding> findings() {
        return StudyFindings.of(study).stream().filter(f -> f.element() == tariff || f.element().eContainer() == tariff).toList();
    }

    /** What is found in the tariff in use, without which nothing is evaluated. */
    private List<String> messages() {
        study.getDepot().setTariff(tariff);
        List<Finding> findings = findings();
        assertEquals(findings.isEmpty(), StudyFindings.canEvaluate(findings));
        return findings.stream().map(Finding::message).toList();
    }

    /** The messy tariff sheet of the kind that districts send. */
    @Test
    void overlapsGapsAndCentsAreNamed() {
        energy("On-peak", TariffDays.WEEKDAYS, 14, 20, 14.8);
        energy("Mid-peak", TariffDays.WEEKDAYS, 18, 22, 0.104);
        energy("Off-peak", TariffDays.WEEKDAYS, 22, 6, 0.066);
        assertEquals(List.of(
                "Tariff by hours X: weekday in every month 06:00–14:00 not covered by an energy charge; Saturday, Sunday, holiday "
                        + "in every month 00:00–24:00 not covered by an energy charge. Each hour needs just one energy charge; "
                        + "correct their hours.",
                "Tariff charge On-peak, weekdays, 14:00 to 20:00: weekday in every month 18:00–20:00 covered twice, by On-peak "
                        + "and Mid-peak. Each hour needs just one energy charge; correct their hours.",
                "Tariff charge Mid-peak, weekdays, 18:00 to 22:00: weekday in every month 18:00–20:00 covered twice, by On-peak "
                        + "and Mid-peak. Each hour needs just one energy charge; correct their hours.",
                "Tariff charge On-peak, weekdays, 14:00 to 20:00: On-peak is 14.8 per kWh, which looks like cents; was 0.148 "
                        + "meant?"),
                messages());
    }

    @Test
    void aTariffThatPricesEachHourOnceIsLeftAlone() {
        energy("Energy", TariffDays.ALL, 0, 0, 0.1);
        tariff.setHolidays("1 Jan; last Mon May; 4 July; 4th Thursday nov");
        assertEquals(List.of(), messages());
    }

    @Test
    void holidaysMustBeUnderstood() {
        energy("Energy", TariffDays.ALL, 0, 0, 0.1);
        for (String part : List.of("July 4", "0 Jan", "31 Nov", "5th Mon May", "4th Xyz Nov", "Easter")) {
            tariff.setHolidays("1 Jan; " + part);
            assertEquals(List.of("Tariff by hours X: “" + part
                    + "” is no date such as 4 Jul and no rule such as 4th Thu Nov or last Mon May."), messages());
        }
    }

    @Test
    void aTariffWithoutChargesIsNotBilled() {
        assertFalse(messages().isEmpty());
    }

    /** Trouble in a tariff to compare with must not keep the study from being evaluated. */
    @Test
    void aTariffToCompareWithIsLeftOutOfTheComparison() {
        int others = study.getDepot().getAlternativeTariffs().size();
        study.getDepot().getAlternativeTariffs().add(tariff);
        energy("On-peak", TariffDays.ALL, 6, 22, 0.2);
        List<Finding> findings = findings();
        assertEquals(List.of(Severity.WARNING), findings.stream().map(Finding::severity).toList());
        assertEquals("Tariff by hours X: weekday, Saturday, Sunday, holiday in every month 00:00–06:00 not covered by an energy "
                + "charge; weekday, Saturday, Sunday, holiday in every month 22:00–24:00 not covered by an energy charge. Each hour "
                + "needs just one energy charge; correct their hours. Until then the tariff is left out of the comparison.",
                findings.get(0).message());
        assertTrue(StudyFindings.canEvaluate(StudyFindings.of(study)));
        assertEquals(others, StudyCompiler.compile(study).depot().alternatives().size());
        energy("Off-peak", TariffDays.ALL, 22, 6, 0.1);
        assertEquals(List.of(), findings());
        assertEquals(others + 1, StudyCompiler.compile(study).depot().alternatives().size());
    }

    private List<String> ofFlat(double monthly, double perKwh, double riderPerKwh, double perKw) {
        FlatTariff flat = DepotFactory.eINSTANCE.createFlatTariff();
        flat.setName("F");
        flat.setMonthlyCharge(monthly);
        flat.setEnergyPricePerKwh(perKwh);
        flat.setRiderPerKwh(riderPerKwh);
        flat.setDemandPricePerKw(perKw);
        study.getDepot().setTariff(flat);
        return StudyFindings.of(study).stream().filter(f -> f.element() == flat).map(f -> f.severity() + ": " + f.message()).toList();
    }

    /** A flat tariff without any price is refused; a rider is a price; a monthly charge alone may be meant. */
    @Test
    void aFlatTariffNeedsAPrice() {
        assertEquals(List.of("ERROR: Flat tariff F: its prices have not been given; enter those of the tariff sheet."), ofFlat(0, 0, 0, 0));
        assertEquals(List.of("WARNING: Flat tariff F: it asks a monthly charge and nothing per kWh or kW; enter the prices of the tariff sheet."),
                ofFlat(25, 0, 0, 0));
        assertEquals(List.of(), ofFlat(0, 0, 0.02, 0));
        assertEquals(List.of(), ofFlat(25, 0, 0.02, 0));
        assertEquals(List.of(), ofFlat(0, 0, 0, 12));
    }
}
