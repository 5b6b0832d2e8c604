package org.amberyard.batch;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
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
    private static final String OFFSET = "--utc-offset-min";
    private static final int MOST_OFFSET_MIN = 15 * 60;

    @Override
    public String name() {
        return "import-meter";
    }

    @Override
    public String usage() {
        return "import-meter STUDY FILE [" + METER + " N] [" + OFFSET + " MINUTES]";
    }

    @Override
    public String summary() {
        return "makes the building's load in STUDY of the interval data in FILE (CSV or Green Button XML; 15, 30 or 60 min, kW or "
                + "kWh)";
    }

    @Override
    public Set<String> options() {
        return Set.of(METER, OFFSET);
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
        imported.keepSolar(depot);
        depot.getBuildingLoadDays().removeAll(imported.replaced(depot));
        depot.getBuildingLoadDays().addAll(imported.days());
        StudyArgument.save(study, paths.study());
        imported.sentences().forEach(console.out()::println);
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
            return source.load(meter, offset(source, meter, arguments), depot.getBuildingMonths());
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

    private static Duration offset(MeterSource source, int meter, Arguments arguments) throws WrongUse {
        OptionalInt minutes = arguments.whole(OFFSET, -MOST_OFFSET_MIN, MOST_OFFSET_MIN);
        if (minutes.isEmpty() && source.needsClock(meter)) {
            throw new WrongUse("The file does not tell its local clock; give " + OFFSET + ", local standard time less UTC in minutes, "
                    + "such as -360.");
        }
        return Duration.ofMinutes(minutes.orElse(0));
    }
}
