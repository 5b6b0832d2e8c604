package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.model.depot.BuildingMonth;
import org.amberyard.model.common.Month;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricePath;
import org.amberyard.model.prices.PricePoint;
import org.junit.jupiter.api.Test;

/** Logs, invoices, bills and price tables into the invented example; expected values worked out by hand. */
class LogSheetsTest extends ExampleSheets {
    private static final double KM = 1.609344;
    private static final double L = 3.785411784;

    private SheetImport read(String kind, String text) throws Exception {
        SheetImport sheet = SheetImport.recognised(SampleSheets.only(samples.text("log.csv", text)), study).orElseThrow();
        assertEquals(kind, sheet.kind().id());
        return sheet;
    }

    private List<String> problems(String kind, String text) throws Exception {
        return read(kind, text).preview(study).problems().stream().map(ImportProblem::toString).toList();
    }

    private Bus bus(String name) {
        return study.getBuses().stream().filter(b -> b.getName().equals(name)).findFirst().orElseThrow();
    }

    /** 640 miles on 40 + 60 gallons after the first fill; the first one was burnt before. */
    @Test
    void fuelEconomyByOdometer() throws Exception {
        read("fuel-log", "Date,Unit,Gallons,Odometer\n9/4/2025,B01,35,89000\n10/4/2025,B01,60,89640\n9/20/2025,B01,40,89260\n").into(study);
        assertEquals(640 * KM / (100 * L), bus("B01").getMeasuredKmPerL(), 1e-9);
    }

    /** Distances given with each fill; a credit note takes fuel back. */
    @Test
    void fuelEconomyByDistance() throws Exception {
        read("fuel-log", "Date,Vehicle,Fuel gallons,Miles driven\n2025-09-04,B02,50,300\n2025-09-30,B02,52,330\n2025-10-01,B02,(2),\n").into(study);
        assertEquals(630 * KM / (100 * L), bus("B02").getMeasuredKmPerL(), 1e-9);
    }

    /** 640 miles on 100 gallons: what was filled up before the first reading and after the last, a single distance and exhaust fluid do not count. */
    @Test
    void fuelCountsBetweenReadingsOnly() throws Exception {
        SheetImport sheet = read("fuel-log", "Date,Unit,Product,Gallons,Odometer,Miles driven\n8/20/2025,B01,Diesel,30,,\n9/4/2025,B01,Diesel,35,89000,50\n"
                + "9/20/2025,B01,Diesel,40,89260,\n9/21/2025,B01,DEF bulk,5,,\n10/4/2025,B01,Diesel,60,89640,\n10/14/2025,B01,Diesel,55,,\n");
        SheetImport.Preview preview = sheet.preview(study);
        assertEquals(List.of(), preview.problems());
        assertTrue(preview.remarks().containsAll(List.of("Fuel of 1 entry of exhaust fluid, which is no fuel, is left out.",
                "Fuel of 2 entries before the first or after the last odometer reading of their bus is left out.")), preview.remarks().toString());
        sheet.into(study);
        assertEquals(640 * KM / (100 * L), bus("B01").getMeasuredKmPerL(), 1e-9);
    }

    @Test
    void fuelThatNoBusBurnsIsAProblem() throws Exception {
        SheetImport sheet = read("fuel-log", "Date,Unit,Gallons,Odometer\n9/4/2025,B01,35,89000\n9/20/2025,B01,900000,89260\n");
        assertEquals(List.of("log.csv, row 3: The fuel of B01 would come to 0.00028889 mpg, which no bus does; it must be 1 mpg to 30 mpg. "
                + "Look for a wrong amount or odometer reading in its rows."), sheet.preview(study).problems().stream().map(ImportProblem::toString).toList());
    }

    @Test
    void theUnitOfAPriceIsNoBus() throws Exception {
        SheetImport sheet = read("fuel-log", "Date,Product,Gallons,Unit price\n9/4/2025,Diesel,35,3.61\n");
        assertTrue(sheet.preview(study).problems().stream().allMatch(p -> p.message().startsWith("A column “Bus” is missing")));
    }

    /** Fuel with a decimal comma beside distances with points. */
    @Test
    void eachColumnHasItsOwnStyleOfNumbers() throws Exception {
        SheetImport sheet = read("fuel-log", "Date;Vehicle;Fuel gallons;Miles driven;Note\n2025-09-04;B02;50,5;300.25;1.5\n2025-09-30;B02;49,5;1,200.25;2.5\n");
        assertTrue(sheet.preview(study).remarks().contains("Numbers of “Fuel gallons” are read with a decimal comma, unlike those of the other columns."));
        sheet.into(study);
        assertEquals(1500.5 * KM / (100 * L), bus("B02").getMeasuredKmPerL(), 1e-9);
    }

    @Test
    void fuelWithoutADistanceIsLeftOutWhereDistancesTell() throws Exception {
        SheetImport sheet = read("fuel-log", "Date,Vehicle,Fuel gallons,Miles driven\n2025-09-04,B02,50,300\n2025-09-30,B02,99,\n");
        assertTrue(sheet.preview(study).remarks().contains("Fuel of 1 entry without a distance is left out."));
        sheet.into(study);
        assertEquals(300 * KM / (50 * L), bus("B02").getMeasuredKmPerL(), 1e-9);
    }

    @Test
    void repeatedRowsBlankNumbersAndOtherFuelsAreTold() throws Exception {
        assertEquals(List.of("log.csv, row 3, column “Unit”: The row says the same as row 2 in every column and would count twice; delete one of them, or "
                + "tell them apart by a number.",
                "log.csv, row 4, column “Gallons”: A number is missing; enter one, 0 for none, or delete the row.",
                "log.csv, row 5, column “Product”: B01 runs on diesel, but the row says “Gasoline”; mend the bus or the fuel, or delete the row."),
                problems("fuel-log", "Date,Unit,Gallons,Odometer,Product\n9/4/2025,B01,35,89000,diesel\n9/4/2025,B01,35,89000,diesel\n"
                        + "9/20/2025,B01,,89260,diesel\n9/21/2025,B01,7,,Gasoline\n"));
        assertEquals(List.of("log.csv, row 3, column “gallons”: A number is missing; enter one, 0 for none, or delete the row.",
                "log.csv, row 4, column “total_usd”: A number is missing; enter one, 0 for none, or delete the row."),
                problems("fuel-invoices", "invoice_no,fuel,gallons,total_usd\nA1,diesel,30,105\nA2,diesel,,105\nA3,diesel,30,n/a\nA4,DEF,30,90\n"));
    }

    @Test
    void workOrdersOfLessThanAYearTellNoUpkeep() throws Exception {
        double before = bus("B01").getMeasuredUpkeepPerKm();
        SheetImport sheet = read("work-orders", "work_order,date,bus_id,system,labor_usd,parts_usd\nW1,2025-07-10,B01,Engine,9000,7000\n"
                + "W2,2025-09-10,B01,Brakes,1,1\nW3,2025-09-10,B01,Body,\"0\",0\n");
        assertTrue(sheet.preview(study).remarks().contains("Work orders from 2025-07-10 to 2025-09-10 span 63 days; fewer than 300 tell no upkeep of a year, "
                + "so the upkeep of the buses stays as it is."), sheet.preview(study).remarks().toString());
        assertEquals(List.of(), sheet.into(study));
        assertEquals(before, bus("B01").getMeasuredUpkeepPerKm());
    }

    @Test
    void anOdometerThatRunsBackOrLeapsIsTold() throws Exception {
        assertEquals(List.of(
                "log.csv, row 3, column “Reading”: The reading of 88,982 mi is below that of 89,640 mi on 2025-09-04 in row 2: digits swapped, or a new odometer? "
                        + "Mend it, or leave readings of before the change out.",
                "log.csv, row 4, column “Bus”: “B77” is no bus of the study; it has B01, B02, B03, B04, B05, B06, B07, B08 and 16 more.",
                "log.csv, row 5, column “Reading”: The reading of 980,100 mi is 890,460 mi above that of 89,640 mi on 2025-09-04 in row 2, more than a bus drives "
                        + "in 26 days; is a digit wrong?",
                "log.csv, row 6, column “Date”: “soon” must be a date such as 2025-09-04 or 9/4/2025."),
                problems("odometers", "Bus,Date,Reading\nB01,2025-09-04,89640\nB01,2025-09-20,88982\nB77,2025-09-20,1\nB01,2025-09-30,980100\nB01,soon,5\n"));
    }

    @Test
    void aReadingBelowThatOfTheStudyIsADoubt() throws Exception {
        bus("B01").setOdometerKm(160_934.4);
        String doubt = "Row %d: the reading of 89,640 mi of B01 is below the 100,000 mi that the study has; is it an earlier one, or from a new odometer?";
        SheetImport.Preview log = read("odometers", "Bus,Date,Reading\nB01,2025-09-20,89640\nB01,2025-09-04,89500\n").preview(study);
        assertEquals(List.of(), log.problems());
        assertTrue(log.remarks().contains(doubt.formatted(2)), log.remarks().toString());
        SheetImport.Preview list = read("buses", "Bus,Odometer\nB01,89640\n").preview(study);
        assertTrue(list.remarks().contains(doubt.formatted(2)), list.remarks().toString());
        assertTrue(read("buses", "Bus,Odometer\nB01,100001\n").preview(study).remarks().stream().noneMatch(r -> r.contains("below")));
    }

    @Test
    void datesOfTwoOrdersAreAProblemAndTheOrderIsAlwaysTold() throws Exception {
        assertTrue(problems("odometers", "Bus,Date,Reading\nB01,13/9/2025,89640\nB01,9/14/2025,89700\n").contains("log.csv, row 1: Dates of “Date” are "
                + "written in two ways: “13/9/2025” has the day first, “9/14/2025” the month. Write all of them alike, best as 2025-09-04."));
        assertTrue(read("odometers", "Bus,Date,Reading\nB01,4/9/2025,89640\nB01,13/9/2025,89700\n").preview(study).remarks()
                .contains("Dates of “Date” are read with the day first, as “13/9/2025” shows."));
    }

    /** A year at 25 miles a day. */
    @Test
    void odometersOfAYearTellTheOtherDistance() throws Exception {
        Bus spare = study.getBuses().stream().filter(b -> b.getRoute() == null).findFirst().orElseThrow();
        read("odometers", "Bus,Date,Odometer reading\n" + spare.getName() + ",2025-07-01,100000\n" + spare.getName() + ",2026-07-01,109125\n").into(study);
        assertEquals(109_125 * KM, spare.getOdometerKm(), 1e-6);
        assertEquals(9125 * KM * 365.25 / 365, spare.getOtherKmPerYear(), 1e-6);
    }

    /** Else the annual distance would count twice once the route has its runs. */
    @Test
    void distancesOfBusesWhoseRouteHasNoRunsStay() throws Exception {
        Bus bus = bus("B01");
        bus.getRoute().getRuns().clear();
        double before = bus.getOtherKmPerYear();
        SheetImport odometers = read("odometers", "Bus,Date,Odometer reading\nB01,2025-07-01,100000\nB01,2026-07-01,109125\n");
        assertTrue(odometers.preview(study).remarks().contains("The route of B01 has no runs yet, so its other distance stays as it is; import the route "
                + "sheet, then these readings again."));
        odometers.into(study);
        SheetImport buses = read("buses", "Bus,Model year,Annual miles\nB01,2008,8500\n");
        assertTrue(buses.preview(study).remarks().contains("Row 2: the route of B01 has no runs yet, so its other distance stays as it is; import the "
                + "route sheet, then this list again."), buses.preview(study).remarks().toString());
        buses.into(study);
        assertEquals(before, bus.getOtherKmPerYear());
    }

    @Test
    void workOrdersWithoutWarrantyAndAccidents() throws Exception {
        SheetImport sheet = read("work-orders", "work_order,date,bus_id,system,labor_usd,parts_usd\nW1,2025-07-10,B01,PM inspection,400,350\n"
                + "W2,2026-06-20,B01,Brakes,500,250\nW3,2025-12-01,B01,Collision repair,9000,4000\nW4,2026-01-05,B01,Warranty: injector,0,0\n");
        SheetImport.Preview preview = sheet.preview(study);
        assertTrue(preview.remarks().contains("2 work orders over 13,000.00 are left out as warranty or accident work."), preview.remarks().toString());
        sheet.into(study);
        Bus bus = bus("B01");
        assertEquals(1500 / (RouteYear.km(bus.getRoute()) + bus.getOtherKmPerYear()), bus.getMeasuredUpkeepPerKm(), 1e-9);
    }

    /** 9,800 for 2,800 gallons after a credit note: 3.50 a gallon. */
    @Test
    void invoicesTellThePriceAndAreHeldAgainstTheBuses() throws Exception {
        SheetImport sheet =
                read("fuel-invoices", "invoice_no,date,fuel,gallons,total_usd\nA1,2025-07-04,diesel,3000,10500\nA2,2025-07-05,Diesel,(200),\"($700.00)\"\n");
        SheetImport.Preview preview = sheet.preview(study);
        assertEquals(List.of(), preview.problems());
        assertTrue(preview.remarks().stream().anyMatch(r -> r.startsWith("Invoices of diesel: 2,800 gal; ") || r.startsWith("Not every bus on diesel")),
                preview.remarks().toString());
        sheet.into(study);
        assertEquals(3.5 / L, diesel().getPricePerL(), 1e-9);
        assertEquals(List.of("log.csv, row 3, column “invoice_no”: “A1” stands in rows 2 and 3; they differ in gallons. Keep one of them."),
                problems("fuel-invoices", "invoice_no,fuel,gallons,total_usd\nA1,diesel,30,105\nA1,diesel,31,105\n"));
    }

    /** Two equal deliveries of a day are two; the same file read again changes nothing. */
    @Test
    void invoicesNeedNoNumber() throws Exception {
        SheetImport sheet = read("fuel-invoices", "Date,Tank,Fuel,Gallons,Total\n2025-07-04,North,diesel,100,300\n2025-07-04,North,diesel,100,300\n"
                + "2025-07-05,North,diesel,100,450\n");
        SheetImport.Preview preview = sheet.preview(study);
        assertEquals(List.of(), preview.problems());
        assertTrue(preview.remarks().containsAll(List.of("3 invoices have no number; such are told apart by date, tank, fuel, quantity and total, and equal "
                + "ones by their order.", "Rows 2 and 3 say the same without a number of an invoice, and each counts; delete what stands there twice.")),
                preview.remarks().toString());
        sheet.into(study);
        assertEquals(3.5 / L, diesel().getPricePerL(), 1e-9);
        assertEquals(List.of(), sheet.preview(study).changes());
    }

    private FuelPrice diesel() {
        return study.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast)
                .filter(p -> p.getFuel().getLiteral().equals("diesel")).findFirst().orElseThrow();
    }

    @Test
    void everyProblemOfARowIsTold() throws Exception {
        assertEquals(List.of("Fuel: “deisel” is no fuel with a price in the study; it has diesel, gasoline. Is “diesel” meant?",
                "Gallons: “3,5” must be a number in gal or L; decimals stand behind a point here: write 3.5.",
                "Total: A number is missing; enter one, 0 for none, or delete the row."),
                cells("fuel-invoices", "Invoice,Fuel,Gallons,Total\nA0,diesel,2.5,9\nA2,diesel,2.5,9\nA1,deisel,\"3,5\",\n"));
        assertEquals(List.of("Bus: The row names no bus; enter one, or delete the row.", "Date: A date is missing; enter one such as 2025-09-04.",
                "Gallons: A number is missing; enter one, 0 for none, or delete the row.", "Odometer: “?1” must be a number in mi or km."),
                sorted("fuel-log", "Date,Bus,Gallons,Odometer\n,,,?1\n"));
        assertEquals(List.of("Bus: The row names no bus; enter one, or delete the row.", "Date: “soon” must be a date such as 2025-09-04 or 9/4/2025.",
                "Labor: “x” must be a number in USD.", "Parts: “y” must be a number in USD."),
                sorted("work-orders", "Date,Bus,System,Labor,Parts\nsoon,,Brakes,x,y\n"));
        assertEquals(List.of("Bus: The row names no bus; enter one, or delete the row.", "Date: “soon” must be a date such as 2025-09-04 or 9/4/2025.",
                "Reading: “x” must be a number in mi or km."), sorted("odometers", "Bus,Date,Reading\n,soon,x\n"));
        assertEquals(List.of("End date: “later” must be a date such as 2025-09-04 or 9/4/2025.", "Start date: A date is missing; enter the first day of the "
                + "period.", "kW: “-1” must be a demand of at least 0.", "kWh: A number is missing; enter one, 0 for none, or delete the row."),
                sorted("utility-bills", "Start date,End date,kWh,kW\n,later,,-1\n"));
        assertEquals(List.of("Diesel: “-4” must be a price above 0.", "Year: “2026.5” must be a whole year such as 2026."),
                sorted("prices", "Year,Diesel\n2026,4\n2026.5,-4\n"));
        assertEquals(List.of("Year: A year is missing; enter one, or delete the row."), cells("prices", "Year,Diesel\n2026,4\n,4\n"));
    }

    private List<String> cells(String kind, String text) throws Exception {
        return read(kind, text).preview(study).problems().stream().map(p -> p.column() + ": " + p.message()).toList();
    }

    private List<String> sorted(String kind, String text) throws Exception {
        return cells(kind, text).stream().sorted().toList();
    }

    /** A row of somebody's own prices may say what the example of the template says. */
    @Test
    void onlyTemplatesHaveAnExample() throws Exception {
        List<String> remarks = read("prices", "FY,Diesel price\n2026,3.66\n2028,4\n").preview(study).remarks();
        assertTrue(remarks.stream().noneMatch(r -> r.contains("example")), remarks.toString());
    }

    @Test
    void moneyIsNoEnergy() throws Exception {
        assertEquals(List.of("kWh: “$2,310.20” must be a number in kWh, but it is money."),
                cells("utility-bills", "Start date,End date,kWh\n2025-07-01,2025-08-01,\"$2,310.20\"\n"));
    }

    @Test
    void entriesWithoutAReadingAreTold() throws Exception {
        assertTrue(read("odometers", "Bus,Date,Reading\nB01,2025-09-04,89900\nB01,2025-10-04,\n").preview(study).remarks()
                .contains("B01 has 1 entry without a reading; nothing is taken from it."));
    }

    /** From 16 June to 16 July and on to 16 August: July gets 15/30 of the first bill and 16/31 of the second, and the higher demand. */
    @Test
    void billingPeriodsAreSpreadOverMonths() throws Exception {
        SheetImport sheet = read("utility-bills", "Service from,Service to,kWh,kW\n2025-06-16,2025-07-16,3000,20\n2025-07-16,2025-08-16,3100,25\n");
        SheetImport.Preview preview = sheet.preview(study);
        assertTrue(preview.remarks().contains("Of 2025-06 only 15 days are billed; it is left out."), preview.remarks().toString());
        sheet.into(study);
        assertEquals(15 * 100 + 16 * 100, july().getEnergyKwh(), 1e-9);
        assertTrue(problems("utility-bills", "Start date,End date,kWh\n2025-07-01,2025-08-01,100\n2025-07-20,2025-08-20,100\n").get(0)
                .contains("Days of 2025-07 are billed twice"));
        assertTrue(problems("utility-bills", "Start date,End date,kWh\n2025-08-01,2025-07-01,100\n").get(0).contains("not after its start"));
    }

    /** Thirty-one days from 1 to 31 July, as the next period begins on 1 August. */
    @Test
    void theLastDayOfAPeriodCountsWhereTheNextBeginsAfterIt() throws Exception {
        String told = "Each period ends on the day before the next begins, or on the last day of its month; that day is taken as part of it.";
        SheetImport sheet = read("utility-bills", "Service from,Service to,kWh\n7/1/2025,7/31/2025,3100\n8/1/2025,8/29/2025,2900\n");
        List<String> remarks = sheet.preview(study).remarks();
        assertTrue(remarks.containsAll(List.of(told, "Of 2025-08 29 of 31 days are billed; the others are taken as like them.")), remarks.toString());
        sheet.into(study);
        assertEquals(3100, july().getEnergyKwh(), 1e-9);
        assertTrue(read("utility-bills", "Service from,Service to,kWh\n7/1/2025,7/31/2025,3000\n").preview(study).remarks().contains(told));
        assertTrue(read("utility-bills", "Service from,Service to,kWh\n7/1/2025,7/31/2025,3000\n7/31/2025,8/31/2025,3000\n").preview(study).remarks()
                .stream().noneMatch(told::equals));
    }

    private BuildingMonth july() {
        return study.getDepot().getBuildingMonths().stream().filter(m -> m.getMonth() == Month.JULY).findFirst().orElseThrow();
    }

    @Test
    void pricesByYearBecomeFactorsOfTheBaseYear() throws Exception {
        int base = study.getSettings().getBaseYear();
        read("prices", "Fiscal year,Diesel (USD/gal)\n" + base + ",4.00\n" + (base + 1) + ",4.20\n" + (base + 5) + ",5\n").into(study);
        PricePath diesel =
                study.getPrices().stream().filter(p -> p instanceof FuelPrice f && f.getFuel().getLiteral().equals("diesel")).findFirst().orElseThrow();
        assertEquals(List.of(base, base + 1, base + 5), diesel.getPoints().stream().map(PricePoint::getYear).toList());
        assertEquals(List.of(1.0, 1.05, 1.25), diesel.getPoints().stream().map(PricePoint::getFactor).toList());
        assertTrue(problems("prices", "Year,Diesel\n2099,4.00\n").get(0).contains("has no figure for " + base + ", the base year"));
    }

    @Test
    void ratiosAmongPricesAreADoubt() throws Exception {
        int base = study.getSettings().getBaseYear();
        String table = "Year,Diesel\n" + base + ",%s\n" + (base + 1) + ",%s\n";
        List<String> index = read("prices", table.formatted("1", "0.95")).preview(study).remarks();
        assertTrue(index.contains("“Diesel” has 1 for " + base + ", so its figures are taken for ratios to the price of that year, which stays as the study "
                + "has it."), index.toString());
        List<String> shares = read("prices", table.formatted("0.95", "0.97")).preview(study).remarks();
        assertTrue(shares.contains("“Diesel” has 0.95 for " + base + ": a price, or a ratio or share? It is taken for a price; where it is a ratio to another "
                + "year, or a change by the year, write prices, or ratios with 1 for " + base + "."), shares.toString());
        List<String> mixed = read("prices", table.formatted("4.00", "0.95")).preview(study).remarks();
        assertTrue(mixed.contains("Row 3: “Diesel” goes from 4 in " + base + " (row 2) to 0.95 in " + (base + 1)
                + "; is one a ratio or share, or in another unit?"), mixed.toString());
        List<String> sound = read("prices", table.formatted("4.00", "4.20")).preview(study).remarks();
        assertTrue(sound.stream().noneMatch(r -> r.contains("“Diesel”")), sound.toString());
    }

    /** What is filled into a template is understood again, in either kind of file. */
    @Test
    void templatesAreUnderstood() throws Exception {
        for (SheetKind kind : SheetKind.ALL) {
            for (String ending : List.of(".xlsx", ".csv")) {
                Path file = folder.resolve(kind.id() + ending);
                new SheetTemplate(kind, study).write(file);
                SheetImport read = SheetImport.recognised(SampleSheets.only(file), study).orElseThrow();
                assertEquals(kind.id(), read.kind().id());
                assertEquals(kind.columns(study).size(), read.mapping().columns().size(), kind.id());
                SheetImport.Preview untouched = read.preview(study);
                assertEquals(List.of(), untouched.changes(), kind.id());
                assertTrue(untouched.remarks().contains("Row 2 is the example of the template and is left out."), untouched.remarks().toString());
            }
            Path text = folder.resolve(kind.id() + ".csv");
            String example = Files.readAllLines(text).get(1);
            Files.writeString(text, Files.readString(text) + example + "\r\n");
            SheetImport.of(kind, SampleSheets.only(text), study).preview(study).problems()
                    .forEach(p -> assertTrue(p.message().contains("is no bus of the study"), p.toString()));
        }
    }
}
