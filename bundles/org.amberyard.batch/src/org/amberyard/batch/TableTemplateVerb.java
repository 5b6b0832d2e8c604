package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.exchange.sheet.SheetKind;
import org.amberyard.exchange.sheet.SheetTemplate;
import org.amberyard.model.study.Study;

/** Writes a table to be filled in. */
final class TableTemplateVerb implements Verb {
    private static final String OUT = "--out";

    @Override
    public String name() {
        return "table-template";
    }

    @Override
    public String usage() {
        return "table-template STUDY KIND " + OUT + " FILE";
    }

    @Override
    public String summary() {
        return "writes a table to be filled in and imported into STUDY, with its units, an example row and what each column allows; KIND is one of "
                + kinds() + "; FILE ends in .xlsx or .csv";
    }

    private static String kinds() {
        return SheetKind.ALL.stream().map(SheetKind::id).collect(Collectors.joining(", "));
    }

    @Override
    public Set<String> options() {
        return Set.of(OUT);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        List<String> operands = arguments.operands(2, "a study and a kind of table");
        Study study = StudyArgument.load(arguments.studyOf(operands.get(0), console.folder()));
        SheetKind kind = SheetKind.byId(operands.get(1))
                .orElseThrow(() -> new WrongUse("KIND is “" + operands.get(1) + "”; it must be one of " + kinds() + "."));
        Path file = arguments.path(OUT, console.folder());
        new SheetTemplate(kind, study).write(file);
        console.out().println("The table to be filled in is " + file);
        return ExitCode.DONE;
    }
}
