package org.amberyard.batch;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.MeterImport;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.study.Study;

/** Puts the building's load of a meter's interval data into a study, and says what was read and assumed. */
final class ImportMeterVerb implements Verb {

    @Override
    public String name() {
        return "import-meter";
    }

    @Override
    public String usage() {
        return "import-meter STUDY FILE";
    }

    @Override
    public String summary() {
        return "makes the building's load in STUDY of the interval data in FILE (CSV, 15, 30 or 60 min, kW or kWh)";
    }

    @Override
    public Set<String> options() {
        return Set.of();
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse {
        Arguments.StudyAndFile paths = arguments.studyAndFile(console.folder());
        Study study = StudyArgument.load(paths.study());
        Depot depot = study.getDepot();
        if (depot == null) {
            throw new WrongUse("STUDY is " + paths.study() + ", which has no depot that could have a building.");
        }
        MeterImport imported = read(paths.file(), depot);
        imported.keepSolar(depot);
        depot.getBuildingLoadDays().removeAll(imported.replaced(depot));
        depot.getBuildingLoadDays().addAll(imported.days());
        StudyArgument.save(study, paths.study());
        imported.sentences().forEach(console.out()::println);
        console.out().println(imported.days().size() + " load days are in the study.");
        return ExitCode.DONE;
    }

    private static MeterImport read(Path file, Depot depot) throws WrongUse {
        if (!Files.isRegularFile(file)) {
            throw new WrongUse("FILE is " + file + ", where there is no file; give a CSV file.");
        }
        try {
            return MeterImport.read(file, depot.getBuildingMonths());
        } catch (ImportException e) {
            throw new WrongUse("No load was imported from " + file + ":" + System.lineSeparator() + e.getMessage());
        }
    }
}
