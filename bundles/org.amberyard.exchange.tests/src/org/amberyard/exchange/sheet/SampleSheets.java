package org.amberyard.exchange.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Files of tables for tests, and the invented example as the study that they go into. */
final class SampleSheets {
    private final Path folder;

    SampleSheets(Path folder) {
        this.folder = folder;
    }

    /** The example, read anew. */
    static Study example() throws StudyFileException {
        return StudyFile.load(Path.of(System.getProperty("basedir", ".")).resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
    }

    Path text(String name, String text) throws IOException {
        return bytes(name, text.getBytes(StandardCharsets.UTF_8));
    }

    Path bytes(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    /** A workbook that a filler fills. */
    Path workbook(String name, Filler filler) throws IOException {
        Path path = folder.resolve(name);
        try (XSSFWorkbook book = new XSSFWorkbook(); OutputStream out = Files.newOutputStream(path)) {
            filler.fill(book);
            book.write(out);
        }
        return path;
    }

    /** Fills a workbook. */
    interface Filler {
        void fill(XSSFWorkbook book);
    }

    static Sheet only(Path path) throws ImportException {
        List<Sheet> sheets = SheetReader.read(path, ReadingProgress.NONE);
        return sheets.get(0);
    }

    /** What a text file is recognised as. */
    SheetImport recognised(String name, String text, Study study) throws IOException, ImportException {
        return SheetImport.recognised(only(text(name, text)), study).orElseThrow();
    }

    /** What is wrong in a file for a study. */
    static List<String> problems(SheetImport of, Study study) {
        return of.preview(study).problems().stream().map(ImportProblem::toString).toList();
    }

    /** Texts of the rows of a sheet. */
    static List<List<String>> texts(Sheet sheet) {
        return sheet.rows().stream().map(r -> r.cells().stream().map(SheetCell::text).toList()).toList();
    }

    /** What a file would do to a study. */
    static SheetImport.Preview preview(Path path, Study study) throws ImportException {
        return SheetImport.recognised(only(path), study).orElseThrow().preview(study);
    }
}
