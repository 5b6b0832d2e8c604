package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.exchange.sheet.SheetAmendments;
import org.amberyard.exchange.sheet.SheetChange;
import org.amberyard.exchange.sheet.SheetColumn;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.exchange.sheet.SheetKind;
import org.amberyard.exchange.sheet.SheetMemory;
import org.amberyard.exchange.sheet.SheetReader;
import org.amberyard.exchange.sheet.SheetsTogether;
import org.amberyard.model.study.Study;

/** Puts a sheet of a workbook or a text file into a study: tells first what it would do, and does it when asked to. */
final class ImportTableVerb implements Verb {
    private static final String AS = "--as";
    private static final String SHEET = "--sheet";
    private static final String COLUMNS = "--columns";
    private static final String WRITE = "--write";
    private static final String TOGETHER = "--together";
    private static final String ADD_TYPES = "--add-types";

    @Override
    public String name() {
        return "import-table";
    }

    @Override
    public String usage() {
        return "import-table STUDY FILE [" + AS + " " + kinds("|") + "] [" + SHEET + " NAME | " + TOGETHER + "] [" + COLUMNS + " FILE] [" + ADD_TYPES
                + "] [" + WRITE + "]";
    }

    private static String kinds(String between) {
        return SheetKind.ALL.stream().map(SheetKind::id).collect(Collectors.joining(between));
    }

    @Override
    public String summary() {
        return "recognises what the table FILE (XLSX or delimited text) holds, and says what it would add to STUDY and change in it, or every "
                + "problem that keeps it out; " + WRITE + " does it; " + COLUMNS + " keeps what the columns hold in a file, and takes it from there "
                + "where it exists; " + TOGETHER + " reads the morning and afternoon sheets of a workbook in one go; " + ADD_TYPES
                + " adds vehicle types that a list of buses needs and STUDY lacks, with assumed figures";
    }

    @Override
    public Set<String> options() {
        return Set.of(AS, SHEET, COLUMNS);
    }

    @Override
    public Set<String> flags() {
        return Set.of(WRITE, TOGETHER, ADD_TYPES);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Arguments.StudyAndFile paths = arguments.studyAndFile(console.folder());
        Study study = StudyArgument.load(paths.study());
        Optional<Path> memory = arguments.value(COLUMNS).isPresent() ? Optional.of(arguments.path(COLUMNS, console.folder())) : Optional.empty();
        List<Sheet> sheets = sheets(paths.file());
        SheetImport.Preview preview = arguments.has(TOGETHER) ? together(arguments, sheets, study, console)
                : alone(arguments, sheets, study, memory, console);
        if (!preview.problems().isEmpty()) {
            console.err().println("Nothing is imported: " + preview.problems().size()
                    + (preview.problems().size() == 1 ? " problem." : " problems."));
            return ExitCode.WRONG_USE;
        }
        if (arguments.has(WRITE)) {
            write(preview, study, paths.study(), console);
        }
        return ExitCode.DONE;
    }

    private static SheetImport.Preview together(Arguments arguments, List<Sheet> sheets, Study study, Console console) throws WrongUse {
        for (String option : List.of(AS, SHEET, COLUMNS)) {
            if (arguments.value(option).isPresent()) {
                throw new WrongUse(TOGETHER + " reads all sheets of parts of the day as they tell by themselves; leave " + option + " out.");
            }
        }
        SheetsTogether together = SheetsTogether.of(sheets, study).orElseThrow(() -> new WrongUse(TOGETHER
                + " needs route sheets whose names say AM, midday or PM; the file has " + names(sheets) + "."));
        together.parts().forEach(made -> tellColumns(made, study, console));
        SheetImport.Preview preview = together.preview(study, ReadingProgress.NONE);
        tell(preview, c -> "sheet “" + c.sheet() + "”, row " + c.row(), console);
        return preview;
    }

    private static SheetImport.Preview alone(Arguments arguments, List<Sheet> sheets, Study study, Optional<Path> memory, Console console)
            throws WrongUse, IOException {
        SheetImport made = made(arguments, sheet(arguments, sheets), study, memory)
                .amended(SheetAmendments.NONE.addingTypes(arguments.has(ADD_TYPES)));
        tellColumns(made, study, console);
        SheetsTogether.of(sheets, study).filter(t -> t.has(made.sheet())).ifPresent(t -> console.out().println(
                "The file has sheets of parts of the day, " + t.names() + ": " + TOGETHER + " reads them in one go"));
        SheetImport.Preview preview = made.preview(study);
        tell(preview, c -> "row " + c.row(), console);
        if (memory.isPresent() && preview.problems().isEmpty()) {
            Files.writeString(memory.get(), SheetMemory.of(made).text());
        }
        return preview;
    }

    private static String names(List<Sheet> sheets) {
        return sheets.stream().map(s -> "“" + s.name() + "”").collect(Collectors.joining(", "));
    }

    private static List<Sheet> sheets(Path file) throws WrongUse {
        if (!Files.isRegularFile(file)) {
            throw new WrongUse("FILE is " + file + ", where there is no file; give a workbook (XLSX) or delimited text."
                    + NearFiles.hint(file));
        }
        try {
            return SheetReader.read(file, ReadingProgress.NONE);
        } catch (ImportException e) {
            throw new WrongUse(e.getMessage());
        }
    }

    private static Sheet sheet(Arguments arguments, List<Sheet> sheets) throws WrongUse {
        Optional<String> name = arguments.value(SHEET);
        if (name.isEmpty()) {
            return sheets.get(0);
        }
        return sheets.stream().filter(s -> s.name().equalsIgnoreCase(name.get())).findFirst().orElseThrow(() -> new WrongUse(SHEET + " is “"
                + name.get() + "”; the file has " + names(sheets) + "."));
    }

    private static SheetImport made(Arguments arguments, Sheet sheet, Study study, Optional<Path> memory) throws WrongUse, IOException {
        if (memory.isPresent() && Files.isRegularFile(memory.get())) {
            Optional<SheetImport> remembered = SheetMemory.parse(Files.readString(memory.get())).flatMap(m -> m.on(sheet));
            return remembered.orElseThrow(() -> new WrongUse(COLUMNS + " is " + memory.get() + ", which tells nothing of a sheet with the headers of "
                    + sheet.place() + "."));
        }
        Optional<String> as = arguments.value(AS);
        if (as.isPresent()) {
            return SheetImport.of(SheetKind.byId(as.get()).orElseThrow(() -> new WrongUse(AS + " is “" + as.get() + "”; it must be one of "
                    + kinds(", ") + ".")), sheet, study);
        }
        return SheetImport.recognised(sheet, study).orElseThrow(() -> new WrongUse("Nothing in " + sheet.place()
                + " tells what it holds; say it with " + AS + ", one of " + kinds(", ")
                + ". Programmes and vehicle types are entered in the window, or come as a folder of CSV files with “import”."));
    }

    private static void tellColumns(SheetImport made, Study study, Console console) {
        console.out().println(made.sheet().place() + " as: " + made.kind().label() + ", headers in row " + made.mapping().headerRow());
        for (SheetColumn column : made.kind().columns(study)) {
            made.header(column.id()).ifPresent(header -> console.out().println("  " + header + " = " + column.label()));
        }
    }

    private static void tell(SheetImport.Preview preview, Function<SheetChange, String> place, Console console) {
        console.out().println(preview.rows().words());
        preview.remarks().forEach(console.out()::println);
        preview.problems().stream().map(ImportProblem::toString).forEach(console.err()::println);
        if (preview.problems().isEmpty()) {
            preview.changes().stream().map(c -> place.apply(c) + ": " + c.words()).forEach(console.out()::println);
            long added = preview.changes().stream().filter(SheetChange::isAddition).count();
            long changed = preview.changes().stream().filter(c -> !c.isNew()).count();
            console.out().println(added + " new, " + changed + " changed values");
        }
    }

    private static void write(SheetImport.Preview preview, Study study, Path file, Console console) throws WrongUse {
        try {
            preview.into(study);
        } catch (ImportException e) {
            throw new WrongUse(e.getMessage());
        }
        StudyArgument.save(study, file);
        console.out().println("They are in " + file);
    }
}
