package org.amberyard.exchange.gtfs;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.StudyUpdate;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.study.Study;
import org.amberyard.study.RoundedText;

/** Chosen blocks of a schedule, read and ready to be put into a study. */
public final class GtfsImport {
    private static final int MOST_BLOCKS = 1000;
    private static final int MOST_NAMED = 12;

    private final GtfsFeed feed;
    private final GtfsChoice choice;
    private final GtfsDistances distances;
    private final GtfsRuns runs;
    private final GtfsHeadways headways;

    private GtfsImport(GtfsFeed feed, GtfsChoice choice, GtfsDistances distances, GtfsRuns runs, GtfsHeadways headways) {
        this.headways = headways;
        this.feed = feed;
        this.choice = choice;
        this.distances = distances;
        this.runs = runs;
    }

    /**
     * Reads chosen blocks.
     *
     * @throws ImportException when they are not understood, or too many
     * @throws java.util.concurrent.CancellationException when they are no longer wanted
     */
    public static GtfsImport read(GtfsFeed feed, GtfsChoice choice, ReadingProgress progress) throws ImportException {
        String file = file(feed.path());
        Set<String> there = feed.blocks(choice.days()).stream().map(GtfsBlock::id).collect(Collectors.toSet());
        if (choice.blocks().isEmpty() || choice.blocks().size() > MOST_BLOCKS) {
            throw ProblemList.refusal(file, 0, "", choice.blocks().size() + " blocks were chosen of " + there.size()
                    + "; choose at least one and at most 1,000.");
        }
        List<String> absent = choice.blocks().stream().filter(b -> !there.contains(b)).sorted().toList();
        if (!absent.isEmpty()) {
            throw ProblemList.refusal(file, 0, "", "On " + choice.days().name() + " there is no block " + named(absent) + ".");
        }
        GtfsDetails details = GtfsDetails.read(feed, choice, progress);
        GtfsDistances distances = new GtfsDistances(details);
        return new GtfsImport(feed, choice, distances, new GtfsRuns(details, distances, file), details.headways());
    }

    private static String file(Path path) {
        return path.getFileName().toString();
    }

    /** Names of the blocks, which become names of routes. */
    public Set<String> blocks() {
        return runs.blocks().keySet();
    }

    /** What the blocks change in a study. */
    public StudyUpdate update(Study study) {
        return new GtfsUpdate(study, choice.days(), file(feed.path())).of(runs.blocks());
    }

    /** What was read and what had to be assumed. */
    public List<String> sentences(Study study) {
        RoundedText figures = new RoundedText(study);
        double km = runs.blocks().values().stream().flatMap(List::stream).mapToDouble(GtfsRun::km).sum();
        int count = runs.blocks().values().stream().mapToInt(List::size).sum();
        List<String> sentences = new ArrayList<>();
        sentences.add(String.format(Locale.ENGLISH, "%s of %s with %s and %s a day, on %s.", counted(runs.blocks().size(), "block"),
                named(feed.agencies()), counted(count, "run"), figures.of(Literals.RUN__DISTANCE_KM, km), choice.days().words()));
        others().ifPresent(sentences::add);
        sentences.add("Lengths are " + distances.ways().stream().map(GtfsDistance.Way::words).collect(Collectors.joining(", and "))
                + ". Not in them: the way from the yard and back; add it to the first and the last run.");
        ways(figures).ifPresent(sentences::add);
        headways().ifPresent(sentences::add);
        sentences.add("The schedule does not tell riders, top speed and climb: new runs have the usual ones and no climb. Between its runs a "
                + "bus stands away from the yard.");
        addPeculiar(sentences);
        return sentences;
    }

    /** What is not so in every schedule. */
    private void addPeculiar(List<String> sentences) {
        if (runs.joined() > 0) {
            sentences.add("Trips that begin after midnight are joined to the run before them: " + runs.joined() + ".");
        }
        if (!runs.shifted().isEmpty()) {
            sentences.add("Blocks that begin after midnight are put on the morning of the next day: " + named(runs.shifted()) + ".");
        }
        if (!runs.tooLong().isEmpty()) {
            sentences.add("Longer than 24 h, so that one bus cannot drive them day after day: " + named(runs.tooLong()) + ".");
        }
        if (runs.guessed() > 0) {
            sentences.add("Trips without a block_id make " + counted(runs.guessed(), "block") + ": a bus goes on with the next trip of its "
                    + "route that starts within 300 m of where it ended, after 2 h at most. Hold that against the agency's own blocks.");
        }
        if (feed.otherRoutes() > 0) {
            sentences.add("Routes of trains, trams, ferries and the like, which are left out: " + feed.otherRoutes() + ".");
        }
    }

    private Optional<String> ways(RoundedText figures) {
        GtfsWays ways = runs.ways();
        if (ways.ways() == 0 && ways.tooShort() == 0) {
            return Optional.empty();
        }
        String added = ways.ways() == 0 ? "" : "Ways without riders between trips are runs of their own, marked as assumed: " + ways.ways() + " of "
                + figures.of(Literals.RUN__DISTANCE_KM, ways.km()) + " in all, straight lines times " + GtfsWays.DETOUR + " at "
                + figures.of(Literals.RUN__TOP_SPEED_KMH, GtfsWays.SPEED_KMH) + ". ";
        return Optional.of((added + (ways.tooShort() == 0 ? "" : "Left out, because the time between the trips is too short for them: " + ways.tooShort()
                + "; hold their ends against the schedule.")).strip());
    }

    private Optional<String> headways() {
        return headways.trips() == 0 ? Optional.empty()
                : Optional.of(counted(headways.trips(), "trip") + " repeated by headway (frequencies.txt) " + (headways.trips() == 1 ? "makes " : "make ")
                        + counted(headways.departures(), "departure") + "; which bus drives which is a guess, as for trips without a block_id"
                        + (headways.notExact() > 0 ? ", and " + headways.notExact() + " of them are not promised to the minute." : "."));
    }

    private Optional<String> others() {
        List<GtfsDays> others = feed.kinds().stream().filter(d -> !d.equals(choice.days())).toList();
        return others.isEmpty() ? Optional.empty() : Optional.of("Other days of the schedule are left out: "
                + listed(others.stream().map(GtfsDays::words).toList(), "; ") + ".");
    }

    private static String counted(int count, String what) {
        return String.format(Locale.ENGLISH, "%,d %s", count, count == 1 ? what : what + "s");
    }

    private static String named(List<String> names) {
        return listed(names, ", ");
    }

    private static String listed(List<String> words, String between) {
        return words.stream().limit(MOST_NAMED).collect(Collectors.joining(between))
                + (words.size() > MOST_NAMED ? " and " + (words.size() - MOST_NAMED) + " more" : "");
    }
}
