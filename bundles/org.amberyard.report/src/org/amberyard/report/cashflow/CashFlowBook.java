package org.amberyard.report.cashflow;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.plan.CostQuantities;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.io.QuietLogging;
import org.amberyard.model.io.SteadyZip;
import org.amberyard.report.document.OfficeProperties;
import org.amberyard.report.document.Paper;
import org.amberyard.report.document.SheetPages;
import org.amberyard.report.document.SheetStyles;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The cash flow of all plans as a workbook that computes: rates and prices are typed in, everything that follows from them is a
 * formula. As it leaves the program it gives the results of the program.
 */
public final class CashFlowBook {
    private static final List<String> READ_ME = List.of(
            "The sheet “Compare” answers; “Inputs” is what may be changed: discount rate, inflation, timing, insurance, prices "
                    + "and their paths.",
            "“Prices” follows from them by year, in constant money. “Quantities” is what a plan needs and does, counted by the "
                    + "program.",
            "“Ledger” multiplies the two, states the money and discounts it. Purchases fall at the start of a year, running costs "
                    + "where “Inputs” says,",
            "what is left at its end. Costs are positive, what comes in is negative.",
            "What does not follow a changed price here: awards, credits and aids (amounts in money of their time), charging "
                    + "plans, decisions on packs",
            "and buses, and amounts that are no quantity at a price. For these, change the study itself and evaluate it again.",
            "“Difference, relative” on “Compare” is zero up to rounding of the computer as long as nothing is changed.");

    private final StudyResult result;
    private final UnitSystem system;
    private final String footer;
    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final SheetStyles styles = new SheetStyles(workbook);

    private CashFlowBook(StudyResult result, UnitSystem system, String footer) {
        this.result = result;
        this.system = system;
        this.footer = footer;
    }

    /**
     * The workbook as a file for letter paper; the same result gives the same bytes.
     *
     * @param footer line at the foot of every page
     */
    public static byte[] bytes(StudyResult result, UnitSystem system, String footer) throws IOException {
        return bytes(result, system, footer, Paper.LETTER);
    }

    /** The same for any paper. */
    public static byte[] bytes(StudyResult result, UnitSystem system, String footer, Paper paper) throws IOException {
        QuietLogging.set();
        CashFlowBook book = new CashFlowBook(result, system, footer);
        try (book.workbook) {
            return book.written(paper);
        }
    }

    private byte[] written(Paper paper) throws IOException {
        FormulaSheet readMe = sheet("Read me");
        FormulaSheet compare = sheet("Compare");
        InputsSheet inputs = new InputsSheet(sheet("Inputs"), result.input(), system);
        PricesSheet prices = new PricesSheet(sheet("Prices"), inputs, result.input());
        List<CostQuantities> costs = result.plans().stream().map(p -> p.costs().quantities()).toList();
        List<QuantitiesSheet> quantities = new ArrayList<>();
        List<FormulaSheet> ledgerSheets = new ArrayList<>();
        for (int plan = 0; plan < costs.size(); plan++) {
            quantities.add(new QuantitiesSheet(sheet("Quantities " + (plan + 1)), result.input(), system));
            ledgerSheets.add(sheet("Ledger " + (plan + 1)));
            quantities.get(plan).write(result.plans().get(plan).name(), costs.get(plan), prices, footer);
        }
        inputs.write(prices.prices(), footer);
        prices.write(footer);
        List<LedgerSheet> ledgers = new ArrayList<>();
        for (int plan = 0; plan < costs.size(); plan++) {
            LedgerSheet ledger = new LedgerSheet(ledgerSheets.get(plan), inputs, result.input());
            ledger.write(result.plans().get(plan), costs.get(plan), quantities.get(plan), prices, footer);
            ledgers.add(ledger);
        }
        new ComparisonSheet(compare, result, ledgers).write(footer);
        write(readMe);
        workbook.forEach(s -> SheetPages.on((XSSFSheet) s, paper));
        return packed();
    }

    private FormulaSheet sheet(String name) {
        return new FormulaSheet(workbook.createSheet(name), styles);
    }

    private void write(FormulaSheet readMe) {
        readMe.title(result.input().name() + ": cash flow");
        READ_ME.forEach(readMe::line);
        readMe.skip();
        for (int plan = 0; plan < result.plans().size(); plan++) {
            PlanResult of = result.plans().get(plan);
            readMe.line("Quantities " + (plan + 1) + ", Ledger " + (plan + 1) + ": “" + of.name() + "”");
        }
        readMe.line(footer);
        readMe.widths(60, 30, 30, 10, 10);
        readMe.print(footer, 1, 0, 5);
    }

    /** Values are kept beside the formulas for programs that show without computing; those that compute do so when they open it. */
    private byte[] packed() throws IOException {
        XSSFFormulaEvaluator.evaluateAllFormulaCells(workbook);
        workbook.setForceFormulaRecalculation(true);
        OfficeProperties.set(workbook.getProperties(), result.input().name() + ": cash flow",
                "Present cost, savings and payback by formulas");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        workbook.write(out);
        return SteadyZip.of(out.toByteArray());
    }
}
