package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.StudyFolderExport;
import org.amberyard.model.common.Month;
import org.amberyard.model.common.Quality;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffChargeKind;
import org.amberyard.model.depot.TariffDays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets of electric tariffs into the invented example. */
class TariffSheetTest extends ExampleSheets {
    private static final String HEADER = "Schedule EV-2 (invented),,,,,,\nRate name,Charge,Rate,Unit,Season,Days,Window\n";
    private static final String ENERGY = "EV-2,On-peak energy,0.31,USD/kWh,Jun-Sep,Mon-Fri,2-8 pm\n"
            + "EV-2,On-peak energy,$0.21/kWh,,Oct - May,weekdays,14:00-20:00\nEV-2,Off-peak energy,9.1 ¢/kWh,,all year,weekdays,20:00-14:00\n"
            + "EV-2,Off-peak energy,0.091,USD/kWh,,weekend,all day\n";

    private SheetImport made(String rows) throws Exception {
        return samples.recognised("tariff.csv", HEADER + rows, study);
    }

    private List<String> problems(String rows) throws Exception {
        return SampleSheets.problems(made(rows), study).stream().map(p -> p.replace("tariff.csv, ", "")).toList();
    }

    private ScheduledTariff tariff(String name) {
        return study.getDepot().getAlternativeTariffs().stream().filter(t -> t.getName().equals(name)).map(ScheduledTariff.class::cast).findFirst()
                .orElseThrow();
    }

    private TariffCharge charge(int at) {
        return tariff("EV-2").getCharges().get(at);
    }

    @Test
    void aSheetMakesATariffOfItsRows() throws Exception {
        SheetImport made = made("EV-2,Customer charge,$112.00,per month,,,\nEV-2,Meter charge,12,$/month,,,\n" + ENERGY
                + "EV-2,Facilities demand,$5.20/kW,,,,\nEV-2,Fuel adjustment,0.62,cents/kWh,,,\nEV-2,City tax,2.5 %,,,,\n");
        assertEquals("tariffs", made.kind().id());
        SheetImport.Preview preview = made.preview(study);
        assertEquals(List.of(), preview.problems());
        assertTrue(preview.remarks().contains("Rows 3, 4 are added up for tariff “EV-2”."), preview.remarks().toString());
        preview.into(study);
        assertEquals(124, tariff("EV-2").getCustomerCharge(), 1e-9);
        assertEquals(0.025, tariff("EV-2").getTaxShare(), 1e-12);
        assertEquals(Quality.PUBLISHED, tariff("EV-2").getSources().get(0).getQuality());
        assertEquals(6, tariff("EV-2").getCharges().size());
        assertEquals(List.of(Month.JUNE, Month.SEPTEMBER, TariffDays.WEEKDAYS, 14 * 60, 20 * 60, 0.31), List.of(charge(0).getFirstMonth(),
                charge(0).getLastMonth(), charge(0).getDays(), charge(0).getFromMin(), charge(0).getToMin(), charge(0).getPricePerKwh()));
        assertEquals(0.21, charge(1).getPricePerKwh(), 1e-12);
        assertEquals(0.091, charge(2).getPricePerKwh(), 1e-12);
        assertEquals(List.of(TariffDays.WEEKENDS_AND_HOLIDAYS, 0, 0), List.of(charge(3).getDays(), charge(3).getFromMin(), charge(3).getToMin()));
        assertEquals(List.of(TariffChargeKind.DEMAND, 5.2), List.of(charge(4).getKind(), charge(4).getPricePerKw()));
        assertEquals(TariffChargeKind.RIDER_PER_KWH, charge(5).getKind());
        assertEquals(0.0062, charge(5).getPricePerKwh(), 1e-12);
        assertEquals(List.of(), SampleSheets.preview(folder.resolve("tariff.csv"), study).changes(), "once more changes nothing");
    }

    @Test
    void theNextEditionUpdatesPricesAndDropsChargesThatAreGone() throws Exception {
        assertEquals(List.of("Charge: “Demand” → Demand", "Kind: demand", "Price per kW: “5.2” → 5.2 USD/kW·month"),
                made(ENERGY + "EV-2,Demand,5.2,USD/kW,,,\n").into(study).stream().map(SheetChange::words)
                        .filter(w -> w.startsWith("tariff charge Demand of") && w.contains(", ")).map(w -> w.substring(w.indexOf(", ") + 2)).toList());
        assertEquals(List.of(
                "tariff charge On-peak energy, June to September, weekdays, 14:00 to 20:00 of tariff by hours EV-2, Price per kWh: 0.31 USD/kWh → 0.33 USD/kWh",
                "tariff charge Demand of tariff by hours EV-2, Charge: Demand → nothing",
                "tariff charge Demand of tariff by hours EV-2, Kind: demand → nothing",
                "tariff charge Demand of tariff by hours EV-2, Price per kW: 5.2 USD/kW·month → nothing"),
                made(ENERGY.replace("0.31", "0.33")).into(study).stream().map(SheetChange::words).toList());
        assertEquals(4, tariff("EV-2").getCharges().size());
    }

    @Test
    void hoursThatOverlapOrLeaveGapsAndPricesInCentsKeepItOut() throws Exception {
        String hours = ". Each hour needs just one energy charge; correct their hours. Until then the tariff is left out of the comparison.";
        String row = "Tariff charge Off-peak energy, weekdays, %s to 14:00 of tariff by hours EV-2: weekday in every month 18:00–20:00 covered twice, "
                + "by On-peak energy and Off-peak energy" + hours;
        List<String> twice = problems(ENERGY.replace("20:00-14:00", "18:00-14:00"));
        assertEquals(2, twice.size(), twice.toString());
        assertTrue(twice.contains("row 5, column “Window”: " + row.formatted("18:00")), twice.toString());
        assertEquals(List.of("row 3: Tariff by hours EV-2: weekday in every month 20:00–22:00 not covered by an energy charge" + hours),
                problems(ENERGY.replace("20:00-14:00", "10 pm to 2 pm")));
        assertEquals(List.of("row 3, column “Rate”: Tariff charge On-peak energy, June to September, weekdays, 14:00 to 20:00 of tariff by hours EV-2: "
                + "On-peak energy is 14.8 per kWh, which looks like cents; was 0.148 meant? Until then the tariff is left out of the comparison."),
                problems(ENERGY.replace("0.31", "14.8")));
    }

    @Test
    void everyProblemIsToldWithRowColumnValueAndRemedy() throws Exception {
        assertEquals(List.of(
                "row 7, column “Season”: “summer” must be months such as Jun-Sep, or all year; a name alone does not tell which they are.",
                "row 7, column “Window”: “all other hours” must be hours such as 14:00-20:00 or 2 pm to 8 pm, or all day; give each stretch of hours a row.",
                "row 8, column “Rate”: “$7” tells not what it is a price of; write it as 0.148 USD/kWh, or add a column “Kind” or “Unit”.",
                "row 9, column “Unit”: “per lamp” must be USD/kWh, USD/kW, USD/month or %.",
                "row 10, column “Charge”: The row has no name of a charge; enter one, or delete the row.",
                "row 10, column “Days”: Days is “Tuesdays”; it must be one of every day, weekdays, weekdays and Saturdays, Saturdays, Sundays and holidays, weekends and "
                        + "holidays.",
                "row 11, column “Rate name”: A tariff is missing; name one of KE-EVD, KE-GS-TOU, or a new one.",
                "row 12, column “Rate”: “500” must be from 0 USD/kW·month to 100 USD/kW·month.",
                "row 13, column “Rate”: “Demand” has no price; enter one, 0 for none, or delete the row."),
                problems(ENERGY + "EV-2,Energy,0.1,USD/kWh,summer,,all other hours\nEV-2,Power,$7,,,,\nEV-2,Lamps,1,per lamp,,,\n"
                        + "EV-2,,0.1,USD/kWh,,Tuesdays,\n,Energy,0.1,USD/kWh,,,\nEV-2,Demand,500,USD/kW,,,\nEV-2,Demand,,,,,\n"));
    }

    @Test
    void whatATariffHasOnceHoldsAllYearAtAllHours() throws Exception {
        String once = ", which a tariff has once, all year, at all hours and for any use. Clear the cell, and keep one row with what holds all year.";
        assertEquals(List.of("row 7, column “Season”: “Jun-Sep” cannot limit a fixed charge" + once,
                "row 8, column “Season”: “Oct-May” cannot limit a fixed charge" + once,
                "row 9, column “Days”: “weekdays” cannot limit a minimum bill" + once,
                "row 10, column “Window”: “2-8 pm” cannot limit a tax" + once),
                problems(ENERGY + "EV-2,Customer charge,30,$/month,Jun-Sep,,\nEV-2,Customer charge,20,$/month,Oct-May,,\n"
                        + "EV-2,Minimum bill,10,$/month,,weekdays,\nEV-2,City tax,2 %,,,,2-8 pm\n"));
        assertEquals(List.of(), problems(ENERGY + "EV-2,Customer charge,30,$/month,all year,all,all day\n"));
        Path sheet = samples.text("years.csv", "Tariff,Charge,Price,From contract year,Note\nEV-2,Energy,0.1 USD/kWh,,\nEV-2,Meter,9 USD/month,3,\n"
                + "EV-2,Lamp,1 USD/month,,rented\n");
        assertEquals(List.of("years.csv, row 3, column “From contract year”: “3” cannot limit a fixed charge" + once),
                SampleSheets.preview(sheet, study).problems().stream().map(ImportProblem::toString).toList());
        List<String> remarks = SampleSheets.preview(sheet, study).remarks();
        assertTrue(remarks.contains("Notes of rows of fixed charges, minimum bills and taxes are not taken over, since they are of no charge of their own: "
                + "row 4."), remarks.toString());
    }

    @Test
    void whatTheSheetLeavesOutOfATariffIsTold() throws Exception {
        made(ENERGY + "EV-2,Customer charge,30,$/month,,,\nEV-2,Minimum bill,50,$/month,,,\nEV-2,City tax,2.5 %,,,,\n").into(study);
        SheetImport.Preview preview = made(ENERGY + "EV-2,Minimum bill,50,$/month,,,\n").preview(study);
        assertEquals(List.of(), preview.changes());
        assertTrue(preview.remarks().contains("The sheet says nothing of these of tariff “EV-2”, so they stay as they are: Customer charge 30 USD/month, "
                + "Taxes 2.5 %. Give one a row with 0 where it is gone."), preview.remarks().toString());
    }

    @Test
    void aTariffHasOneMinimumBill() throws Exception {
        assertEquals(List.of("row 8: Rows 7, 8 each give a minimum bill of tariff “EV-2”, which has one; keep one of them."),
                problems(ENERGY + "EV-2,Minimum bill,30,$/month,,,\nEV-2,Minimum charge,20,$/month,,,\n"));
    }

    @Test
    void theKindMustAgreeWithThePrice() throws Exception {
        Path sheet = samples.text("kinds.csv", "Tariff,Charge,Kind,Price\nEV-2,Demand,demand,0.1 USD/kWh\nEV-2,Power,power,5\n");
        assertEquals(
                List.of("kinds.csv, row 2, column “Price”: “0.1 USD/kWh” is a price per kWh, but a row of kind “demand” has one per kW; mend one of the two.",
                        "kinds.csv, row 3, column “Kind”: “power” must be energy, demand, rider per kWh, rider, share, fixed, minimum or tax."),
                SampleSheets.preview(sheet, study).problems().stream().map(ImportProblem::toString).toList());
    }

    @Test
    void rowsWithoutATariffAreOfTheOneInUse() throws Exception {
        Path sheet = samples.text("rates.csv", "component,season,hours,unit,rate\non-peak,all,14-20,usd_per_kwh,0.2\noff-peak,all,20-14,usd_per_kwh,0.1\n");
        SheetImport made = SheetImport.recognised(SampleSheets.only(sheet), study).orElseThrow();
        assertEquals("tariffs", made.kind().id());
        SheetImport.Preview preview = made.preview(study);
        assertEquals(List.of(), preview.problems());
        assertTrue(preview.remarks().contains("The sheet names no tariff, so its rows are taken for the charges of “KE-EVD”, the tariff in use; add a column "
                + "“Tariff” where they are of another."), preview.remarks().toString());
        preview.into(study);
        assertEquals(List.of("on-peak", "off-peak"), ((ScheduledTariff) study.getDepot().getTariff()).getCharges().stream().map(TariffCharge::getCharge)
                .toList());
    }

    @Test
    void tablesOfAnExportedFolderChangeNothing() throws Exception {
        Path exported = folder.resolve("exported");
        StudyFolderExport.write(study, exported);
        for (String table : List.of("tariff_charges.csv", "alternative_tariff_charges.csv")) {
            SheetImport made = SheetImport.recognised(SampleSheets.only(exported.resolve(table)), study).orElseThrow();
            assertEquals("tariffs", made.kind().id());
            assertEquals(List.of(), made.preview(study).problems());
            assertEquals(List.of(), made.preview(study).changes());
        }
    }

    @ParameterizedTest
    @CsvSource({"2-8 pm, 840, 1200", "14:00–20:00, 840, 1200", "10 pm to 6 am, 1320, 360", "noon-midnight, 720, 0", "20:00-24:00, 1200, 0", "all day, 0, 0",
        "6 until 14, 360, 840", "9-5 pm, 540, 1020", "11-7 pm, 660, 1140", "10-6 am, 1320, 360", "8-12 pm, 480, 720", "12-6 am, 0, 360",
        "2 pm-20:00, 840, 1200", "6 am-noon, 360, 720"})
    void hoursAreReadAsPeopleWriteThem(String text, int from, int to) {
        assertEquals(new TariffTimes.Span<>(from, to), TariffTimes.hours(text).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2-2 pm", "9 am-5", "14-8 pm"})
    void hoursOfWhichTheHalfOfTheDayIsOpenAreNone(String text) {
        assertEquals(Optional.empty(), TariffTimes.hours(text));
    }

    @ParameterizedTest
    @CsvSource({"Jun-Sep, June, September", "June through September, June, September", "Summer (Jun – Sept), June, September", "all year, January, December",
        "Oct, October, October", "Nov.–Mar., November, March"})
    void seasonsAreReadAsPeopleWriteThem(String text, String first, String last) {
        assertEquals(new TariffTimes.Span<>(Month.get(first), Month.get(last)), TariffTimes.season(text).orElseThrow());
    }
}
