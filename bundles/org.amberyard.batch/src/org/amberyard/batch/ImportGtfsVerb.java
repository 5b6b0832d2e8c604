package org.amberyard.batch;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.StudyUpdate;
import org.amberyard.exchange.gtfs.GtfsBlock;
import org.amberyard.exchange.gtfs.GtfsChoice;
import org.amberyard.exchange.gtfs.GtfsDays;
import org.amberyard.exchange.gtfs.GtfsFeed;
import org.amberyard.exchange.gtfs.GtfsImport;
import org.amberyard.model.study.Study;

/** Puts blocks of a transit schedule into a study as routes, or lists what the schedule holds. */
final class ImportGtfsVerb implements Verb {
    private static final String DAYS = "--days";
    private static final String ROUTES = "--routes";
    private static final String BLOCKS = "--blocks";
    private static final String LIST = "--list";

    @Override
    public String name() {
        return "import-gtfs";
    }

    @Override
    public String usage() {
        return "import-gtfs STUDY SCHEDULE [" + DAYS + " NAME] [" + ROUTES + " NAME,NAME] [" + BLOCKS + " NAME,NAME] [" + LIST + "]";
    }

    @Override
    public String summary() {
        return "adds the blocks of a GTFS SCHEDULE (zip file or folder) to STUDY as routes, those of some routes or some blocks; or lists "
                + "its days and blocks";
    }

    @Override
    public Set<String> options() {
        return Set.of(DAYS, ROUTES, BLOCKS);
    }

    @Override
    public Set<String> flags() {
        return Set.of(LIST);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse {
        Arguments.StudyAndFile paths = arguments.studyAndFile(console.folder());
        Study study = StudyArgument.load(paths.study());
        if (!Files.exists(paths.file())) {
            throw new WrongUse("SCHEDULE is " + paths.file() + ", where there is nothing; give a zip file or a folder.");
        }
        try {
            GtfsFeed feed = GtfsFeed.open(paths.file(), ReadingProgress.NONE);
            GtfsDays days = days(feed, arguments.value(DAYS));
            if (arguments.has(LIST)) {
                list(feed, days, console);
            } else {
                read(feed, new GtfsChoice(days, blocks(feed.blocks(days), arguments)), study, paths.study(), console);
            }
            return ExitCode.DONE;
        } catch (ImportException e) {
            throw new WrongUse("No routes were imported from " + paths.file() + ":" + System.lineSeparator() + e.getMessage());
        }
    }

    private static void list(GtfsFeed feed, GtfsDays days, Console console) {
        console.out().println("Days:");
        feed.kinds().forEach(k -> console.out().println("  " + k.words()));
        console.out().println("Blocks on " + days.name() + ":");
        feed.blocks(days).forEach(b -> console.out().println("  " + b.words()));
    }

    private static void read(GtfsFeed feed, GtfsChoice choice, Study study, Path file, Console console)
            throws ImportException, WrongUse {
        GtfsImport imported = GtfsImport.read(feed, choice, ReadingProgress.NONE);
        StudyUpdate update = imported.update(study);
        update.apply();
        StudyArgument.save(study, file);
        imported.sentences(study).forEach(console.out()::println);
        UpdateText.print(update.changes(), console.out());
    }

    private static GtfsDays days(GtfsFeed feed, Optional<String> named) throws WrongUse {
        Optional<GtfsDays> days = feed.kinds().stream().filter(k -> named.isEmpty() || k.name().equals(named.get())).findFirst();
        return days.orElseThrow(() -> new WrongUse(DAYS + " is “" + named.orElse("") + "”; it must be one of "
                + feed.kinds().stream().limit(20).map(GtfsDays::name).collect(Collectors.joining(", ")) + "."));
    }

    private static Set<String> blocks(List<GtfsBlock> blocks, Arguments arguments) throws WrongUse {
        List<String> routes = names(arguments.value(ROUTES));
        List<String> ids = names(arguments.value(BLOCKS));
        for (String route : routes) {
            if (blocks.stream().noneMatch(b -> b.routes().contains(route))) {
                throw new WrongUse(ROUTES + " has “" + route + "”, which no block of these days serves; " + LIST + " lists them.");
            }
        }
        for (String id : ids) {
            if (blocks.stream().noneMatch(b -> b.id().equals(id))) {
                throw new WrongUse(BLOCKS + " has “" + id + "”, which is no block of these days; " + LIST + " lists them.");
            }
        }
        return blocks.stream().filter(b -> routes.isEmpty() || b.routes().stream().anyMatch(routes::contains))
                .map(GtfsBlock::id).filter(id -> ids.isEmpty() || ids.contains(id)).collect(Collectors.toSet());
    }

    private static List<String> names(Optional<String> text) {
        return text.map(t -> Arrays.stream(t.split(",")).map(String::strip).filter(n -> !n.isEmpty()).toList()).orElse(List.of());
    }
}
