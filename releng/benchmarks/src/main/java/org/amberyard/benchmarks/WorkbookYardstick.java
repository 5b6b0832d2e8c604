package org.amberyard.benchmarks;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyRecosting;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.report.cashflow.CashFlowBook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The cash flow of a study as a workbook, recalculated after an edited discount rate: by POI in this program, and by an office
 * program where there is one. What the workbook counts is less than the study: neither bills nor awards follow.
 */
final class WorkbookYardstick {
    private static final String RATE = "Real discount rate a year";
    private static final double CHANGED_BY = 1e-4;
    private static final int OFFICE_ROUNDS = 2;

    private final Stopwatch watch = new Stopwatch();
    private final StudyInput study;
    private final StudyResult result;
    private final byte[] book;

    WorkbookYardstick(StudyInput study, StudyResult result) throws IOException {
        this.study = study;
        this.result = result;
        this.book = CashFlowBook.bytes(result, UnitSystem.US, "");
    }

    /** Milliseconds of an edited price in this program, all figures of the study. */
    double editMs() throws Exception {
        return watch.ms(() -> StudyRecosting.of(study, result).orElseThrow());
    }

    /** Milliseconds in which POI works all formulas out after an edited rate. */
    double poiMs() throws Exception {
        try (XSSFWorkbook workbook = open()) {
            Cell rate = rate(workbook);
            Callable<Double> recalculation = () -> {
                rate.setCellValue(rate.getNumericCellValue() + CHANGED_BY);
                XSSFFormulaEvaluator.evaluateAllFormulaCells(workbook);
                return presentCost(workbook);
            };
            if (recalculation.call().equals(recalculation.call())) {
                throw new IllegalStateException("The workbook does not follow its discount rate");
            }
            return watch.ms(recalculation);
        }
    }

    /** Number of formulas. */
    int formulas() throws IOException {
        try (XSSFWorkbook workbook = open()) {
            int count = 0;
            for (var sheet : workbook) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        count += cell.getCellType() == CellType.FORMULA ? 1 : 0;
                    }
                }
            }
            return count;
        }
    }

    /**
     * Milliseconds of recalculation by an office program: those of a conversion of the workbook without any kept result, less those of
     * a conversion of a workbook with one empty sheet, which is what starting takes. Empty where there is none.
     */
    OptionalDouble officeMs() throws Exception {
        Path folder = Files.createTempDirectory("office");
        Path whole = folder.resolve("cash.xlsx");
        Path empty = folder.resolve("empty.xlsx");
        try (XSSFWorkbook workbook = open(); OutputStream out = Files.newOutputStream(whole)) {
            workbook.forEach(sheet -> sheet.forEach(row -> row.forEach(WorkbookYardstick::forget)));
            workbook.write(out);
        }
        try (XSSFWorkbook workbook = new XSSFWorkbook(); OutputStream out = Files.newOutputStream(empty)) {
            workbook.createSheet("Empty");
            workbook.write(out);
        }
        try {
            convert(empty, folder);
        } catch (IOException e) {
            System.err.println("No office program: " + e.getMessage());
            return OptionalDouble.empty();
        }
        double startMs = best(() -> convert(empty, folder));
        double wholeMs = best(() -> convert(whole, folder));
        check(folder.resolve("out").resolve("cash.xlsx"));
        return OptionalDouble.of(wholeMs - startMs);
    }

    private double best(Callable<?> work) throws Exception {
        double best = Double.POSITIVE_INFINITY;
        for (int round = 0; round < OFFICE_ROUNDS; round++) {
            best = Math.min(best, watch.once(work));
        }
        return best;
    }

    /** What was converted without being worked out would be no yardstick. */
    private void check(Path converted) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(converted))) {
            double cost = result.baseline().measures().presentCost();
            if (!(Math.abs(presentCost(workbook) / cost - 1) < CHANGED_BY)) {
                throw new IllegalStateException("The office program gives " + presentCost(workbook) + " instead of " + cost);
            }
        }
    }

    private static Object convert(Path file, Path folder) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(List.of("soffice", "-env:UserInstallation=" + folder.resolve("profile").toUri(), "--headless",
                "--convert-to", "xlsx", "--outdir", folder.resolve("out").toString(), file.toString())).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException(said);
        }
        return said;
    }

    /** What is kept beside a formula goes, so that it must be worked out. */
    private static void forget(Cell cell) {
        if (cell.getCellType() == CellType.FORMULA) {
            String formula = cell.getCellFormula();
            cell.removeFormula();
            cell.setBlank();
            cell.setCellFormula(formula);
        }
    }

    private XSSFWorkbook open() throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(book));
    }

    private static Cell rate(XSSFWorkbook workbook) {
        for (Row row : workbook.getSheet("Inputs")) {
            if (row.getCell(0) != null && row.getCell(0).getStringCellValue().equals(RATE)) {
                return row.getCell(1);
            }
        }
        throw new IllegalStateException("The workbook has no input “" + RATE + "”");
    }

    /** Of the baseline. */
    private double presentCost(XSSFWorkbook workbook) {
        return workbook.getSheet("Compare").getRow(2 + result.input().baseline()).getCell(1).getNumericCellValue();
    }
}
