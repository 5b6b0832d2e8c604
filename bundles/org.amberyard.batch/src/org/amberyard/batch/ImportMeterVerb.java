package org.amberyard.batch;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.MeterImport;
import org.amberyard.exchange.MeterSource;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.study.Study;

/** Puts the building's load of a meter's interval data into a study, and says what was read and assumed. */
final class ImportMeterVerb implements Verb {
    private static final String METER = "--meter";
    private static final String ZONE = "--zone";

    @Override
    public String name() {
        return "import-meter";
    }

    @Override
    public String usage() {
        return "import-meter STUDY FILE [" + METER + " N] [" + ZONE + " ZONE]";
    }

    @Override
    public String summary() {
        return "makes the building's load in STUDY of the interval data in FILE (CSV or Green Button XML; 15, 30 or 60 min, kW or "
                + "kWh)";
    }

    @Override
    public Set<String> options() {
        return Set.of(METER, ZONE);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse {
        Arguments.StudyAndFile paths = arguments.studyAndFile(console.folder());
        Study study = StudyArgument.load(paths.study());
        Depot depot = study.getDepot();
        if (depot == null) {
            throw new WrongUse("STUDY is " + paths.study() + ", which has no depot that could have a building.");
        }
        MeterImport imported = read(paths.file(), arguments, depot);
        List<String> changes = imported.changes(depot);
        imported.keepSolar(depot);
        depot.getBuildingLoadDays().removeAll(imported.replaced(depot));
        depot.getBuildingLoadDays().addAll(imported.days());
        depot.getMeterDays().removeAll(imported.replacedDates(depot));
        depot.getMeterDays().addAll(imported.dated());
        StudyArgument.save(study, paths.study());
        imported.sentences().forEach(console.out()::println);
        UpdateText.print(changes, console.out());
        console.out().println(imported.days().size() + " load days are in the study.");
        return ExitCode.DONE;
    }

    private static MeterImport read(Path file, Arguments arguments, Depot depot) throws WrongUse {
        if (!Files.isRegularFile(file)) {
            throw new WrongUse("FILE is " + file + ", where there is no file; give a CSV or XML file.");
        }
        try {
            MeterSource source = MeterSource.read(file, ReadingProgress.NONE);
            int meter = meter(source, arguments);
            return source.load(meter, zone(source, meter, arguments), depot.getBuildingMonths());
        } catch (ImportException e) {
            throw new WrongUse("No load was imported from " + file + ":" + System.lineSeparator() + e.getMessage());
        }
    }

    private static int meter(MeterSource source, Arguments arguments) throws WrongUse {
        int count = source.meters().size();
        OptionalInt meter = arguments.whole(METER, 1, count);
        if (meter.isEmpty() && count > 1) {
            throw new WrongUse("The file has " + count + " meters; choose one with " + METER + ": " + source.list() + ".");
        }
        return meter.orElse(1) - 1;
    }

    private static ZoneId zone(MeterSource source, int meter, Arguments arguments) throws WrongUse {
        Optional<String> zone = arguments.value(ZONE);
        if (zone.isEmpty() && source.needsClock(meter)) {
            throw new WrongUse("The file does not tell its local clock; give " + ZONE + ", such as America/Chicago.");
        }
        try {
            return ZoneId.of(zone.orElse("UTC"));
        } catch (DateTimeException e) {
            throw new WrongUse(ZONE + " is " + zone.get() + "; it must be a time zone such as America/Chicago or UTC-6.");
        }
    }
}
