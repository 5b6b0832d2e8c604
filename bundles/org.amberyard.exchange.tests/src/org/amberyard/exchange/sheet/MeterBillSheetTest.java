package org.amberyard.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.model.depot.MeterBill;
import org.junit.jupiter.api.Test;

/** Printed bills, line by line, into the invented example; figures are invented. */
class MeterBillSheetTest extends ExampleSheets {
    private static final String HEADERS = "Invoice,Service from,Service to,Charge description,Amount,Usage (kWh),Billed kW,Amount due,Rate\n";

    private SheetImport read(String rows) throws Exception {
        SheetImport sheet = SheetImport.recognised(SampleSheets.only(samples.text("bills.csv", HEADERS + rows)), study).orElseThrow();
        assertEquals("printed-bills", sheet.kind().id());
        return sheet;
    }

    private List<String> problems(String rows) throws Exception {
        return read(rows).preview(study).problems().stream().map(ImportProblem::toString).toList();
    }

    private List<MeterBill> bills() {
        return study.getDepot().getMeterBills();
    }

    private static List<String> lines(MeterBill bill) {
        return bill.getLines().stream().map(l -> l.getLine() + " " + l.getAmount()).toList();
    }

    @Test
    void rowsOfABillAreItsLines() throws Exception {
        read("B-7,1/9/2026,2/6/2026,Basic service,68.00,\"27,100\",85.2,$570.40,KE-GS-TOU\n,,,Energy,\"$514.90\",,,,\n,,,Credit,(12.50),,,,\n").into(study);
        MeterBill bill = bills().get(1);
        assertEquals("B-7", bill.getName());
        assertEquals("2026-01-09", bill.getFirstDay());
        assertEquals("2026-02-06", bill.getLastDay());
        assertEquals(List.of("Basic service 68.0", "Energy 514.9", "Credit -12.5"), lines(bill));
        assertEquals(27_100, bill.getEnergyKwh());
        assertEquals(85.2, bill.getDemandKw());
        assertEquals(570.4, bill.getTotal());
        assertEquals("KE-GS-TOU", bill.getTariff().getName());
    }

    /** The day of the reading ends one period and begins the next; it is billed once. */
    @Test
    void daysOfReadingsCountForTheLaterBill() throws Exception {
        SheetImport sheet = read("B-7,2025-12-09,2026-01-08,Energy,500,,,,\nB-8,2026-01-08,2026-02-06,Energy,510,,,,\n");
        assertEquals(1, sheet.preview(study).remarks().stream().filter(r -> r.endsWith("so the earlier ends a day before: B-7.")).count());
        sheet.into(study);
        assertEquals(List.of("2026-01-07", "2026-02-06"), bills().stream().skip(1).map(MeterBill::getLastDay).toList());
        assertNull(bills().get(1).getTotal());
    }

    /** Month by month: the later bill has the bill before it, which the study has, end a day before; the other way round the earlier one that comes. */
    @Test
    void daysOfReadingsCountOnceMonthByMonth() throws Exception {
        bills().clear();
        read("B-8,2026-02-06,2026-03-09,Energy,500,,,,\n").into(study);
        SheetImport later = read("B-9,2026-03-09,2026-04-07,Energy,510,,,,\n");
        assertEquals(1, later.preview(study).remarks().stream().filter(r -> r.endsWith("so the earlier ends a day before: B-8.")).count());
        later.into(study);
        read("B-7,2026-01-08,2026-02-06,Energy,520,,,,\nB-1,2025-06-08,2025-07-07,Energy,520,,,,\n").into(study);
        assertEquals(List.of("2026-03-08", "2026-04-07", "2026-02-05", "2025-07-07"), bills().stream().map(MeterBill::getLastDay).toList());
        read("B-8,2026-02-06,2026-03-09,Energy,500,,,,\n").into(study);
        assertEquals("2026-03-08", bills().get(0).getLastDay());
    }

    @Test
    void aBillThatTheStudyHasIsSetLineByLine() throws Exception {
        read("KE-2026-02,2026-01-08,2026-02-06,energy charge,1,,,,\nKE-2026-02,,,ON-PEAK ENERGY,830.00,,,,\n").into(study);
        assertEquals(1, bills().size());
        assertEquals(9, bills().get(0).getLines().size());
        assertEquals(830, bills().get(0).getLines().get(1).getAmount());
    }

    @Test
    void everyProblemOfARowIsTold() throws Exception {
        assertEquals(List.of("bills.csv, row 2, column “Amount”: “soon” must be a number in USD.",
                "bills.csv, row 2, column “Charge description”: The row names no line of the bill; enter what it charges, or delete the row.",
                "bills.csv, row 2, column “Service to”: The last day of the bill is missing; enter it in the first row of the bill."),
                problems("B-7,1/9/2026,,,soon,,,,\n").stream().sorted().toList());
        assertEquals(List.of("bills.csv, row 3, column “Service to”: Another row of the same bill says 2026-02-06; mend one of the two, or give the bills "
                + "names of their own."), problems("B-7,1/9/2026,2/6/2026,Energy,5,,,,\nB-7,1/9/2026,2/7/2026,Demand,5,,,,\n"));
        assertEquals(1, problems("B-7,2/9/2026,1/6/2026,Energy,5,,,,\n").stream().filter(p -> p.contains("before the first, 2026-02-09")).count());
    }
}
