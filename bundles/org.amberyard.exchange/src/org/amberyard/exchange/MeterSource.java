package org.amberyard.exchange;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.model.depot.BuildingMonth;

/**
 * A file of interval data that has been read, and the meters in it: just one in a CSV file, one or more in a Green Button file.
 */
public final class MeterSource {
    private static final int HEAD_BYTES = 4096;

    private final List<EspiMeter> usable = new ArrayList<>();
    private final List<String> passedOver = new ArrayList<>();
    private final Optional<MeterFile> table;

    private MeterSource(Optional<MeterFile> table) {
        this.table = table;
    }

    /**
     * Reads a file: as Green Button XML when it begins with an angle bracket, else as CSV.
     *
     * @throws ImportException when the file is not understood, or no meter in it can be a building's load
     * @throws java.util.concurrent.CancellationException when the reading is no longer wanted
     */
    public static MeterSource read(Path path, ReadingProgress progress) throws ImportException {
        if (!isXml(path)) {
            return new MeterSource(Optional.of(MeterFile.read(path)));
        }
        MeterSource source = new MeterSource(Optional.empty());
        for (EspiMeter meter : EspiFeed.read(path, progress)) {
            Optional<String> objection = meter.objection();
            objection.ifPresent(o -> source.passedOver.add("Passed over “" + meter.title() + "”: " + o + "."));
            if (objection.isEmpty()) {
                source.usable.add(meter);
            }
        }
        if (source.usable.isEmpty()) {
            throw ProblemList.refusal(path.getFileName().toString(), 0, "", "No meter of the file can be the building's load. "
                    + String.join(" ", source.passedOver));
        }
        return source;
    }

    private static boolean isXml(Path path) throws ImportException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(path))) {
            String head = new String(in.readNBytes(HEAD_BYTES), StandardCharsets.ISO_8859_1);
            return head.replaceAll("[\u0000\u00ef\u00bb\u00bf\u00fe\u00ff\\s]", "").startsWith("<");
        } catch (IOException e) {
            throw ProblemList.refusal(path.getFileName().toString(), 0, "", "The file cannot be read: " + e.getMessage());
        }
    }

    /** What tells the meters apart, in the order of the file. */
    public List<String> meters() {
        return table.isPresent() ? List.of("The meter of the file") : usable.stream().map(EspiMeter::words).toList();
    }

    /** True when the file does not say what the local clock of a meter shows, so that it must be asked. */
    public boolean needsClock(int meter) {
        return table.isEmpty() && usable.get(meter).clock().isEmpty();
    }

    /**
     * The load of a meter.
     *
     * @param meter place among {@link #meters()}
     * @param zone zone of the local clock, where the file does not tell it; else not looked at
     * @param bills monthly bills of the same meter, which tell kW from kWh; may be empty
     * @throws ImportException when a reading cannot be a building's load, or bills show that its unit is another
     */
    public MeterImport load(int meter, ZoneId zone, Collection<BuildingMonth> bills) throws ImportException {
        if (table.isPresent()) {
            return MeterImport.of(table.get(), bills, List.of());
        }
        EspiMeter chosen = usable.get(meter);
        List<String> remarks = new ArrayList<>();
        if (usable.size() > 1) {
            remarks.add("Meter: " + chosen.words() + ".");
        }
        if (chosen.clock().isEmpty()) {
            remarks.add("The file does not tell its local clock; it is taken as that of " + zone.getId() + ".");
        }
        if (chosen.readings().doubtful() > 0) {
            remarks.add(String.format(Locale.ENGLISH, "The file marks %,d readings as estimated, questionable or projected; they count as "
                    + "they are.", chosen.readings().doubtful()));
        }
        remarks.addAll(passedOver);
        return MeterImport.of(chosen.load(clock(chosen, zone)), bills, remarks);
    }

    private static LongFunction<LocalDateTime> clock(EspiMeter meter, ZoneId zone) {
        return meter.clock().<LongFunction<LocalDateTime>>map(c -> c::local)
                .orElse(epochS -> LocalDateTime.ofInstant(Instant.ofEpochSecond(epochS), zone));
    }

    /** Names of the meters in a line, for messages. */
    public String list() {
        List<String> names = meters();
        return IntStream.range(0, names.size()).mapToObj(i -> i + 1 + " " + names.get(i))
                .collect(Collectors.joining("; "));
    }
}
