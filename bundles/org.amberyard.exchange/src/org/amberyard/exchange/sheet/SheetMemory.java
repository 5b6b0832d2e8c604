package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.core.units.UnitSystem;

/**
 * What the columns of a sheet were said to hold, so that the next sheet with the same headers need not be asked about again. A sheet with
 * other columns, more or fewer, is another sheet.
 *
 * @param kind id of the kind of sheet
 * @param headers all headers of the sheet in alphabetical order, spaces and line ends in which are single spaces
 * @param uses what those columns hold that are used, by their headers
 */
public record SheetMemory(String kind, List<String> headers, Map<String, SheetMapping.Use> uses) {
    private static final String BETWEEN = "\t";

    public SheetMemory {
        headers = List.copyOf(headers);
        uses = Map.copyOf(uses);
    }

    /** What is to be remembered of an import. */
    public static SheetMemory of(SheetImport of) {
        Map<String, SheetMapping.Use> uses = new LinkedHashMap<>();
        Optional<SheetRow> headers = of.sheet().rows().stream().filter(r -> r.number() == of.mapping().headerRow()).findFirst();
        headers.ifPresent(row -> of.mapping().columns().forEach((place, use) -> {
            if (!row.cell(place).isBlank()) {
                uses.put(header(row.cell(place)), use);
            }
        }));
        return new SheetMemory(of.kind().id(), headers.map(SheetMemory::headers).orElse(List.of()), uses);
    }

    /** In alphabetical order, since columns are moved at will. */
    private static List<String> headers(SheetRow row) {
        return row.cells().stream().filter(c -> !c.isBlank()).map(SheetMemory::header).sorted().toList();
    }

    /** Headers are broken into lines at will. */
    private static String header(SheetCell cell) {
        return cell.text().replaceAll("\\s+", " ");
    }

    /** The import of a sheet that has the same headers; empty for another sheet. */
    public Optional<SheetImport> on(Sheet sheet) {
        Optional<SheetKind> known = SheetKind.byId(kind);
        List<SheetRow> first = sheet.rows().subList(0, Math.min(SheetImport.SEARCHED_ROWS, sheet.rows().size()));
        return uses.isEmpty() || known.isEmpty() ? Optional.empty()
                : first.stream().filter(this::hasAll).findFirst().map(row -> new SheetImport(known.get(), sheet, mapping(row)));
    }

    /** Of two columns with the same header nothing tells which is which. */
    private boolean hasAll(SheetRow row) {
        return headers(row).equals(headers) && uses.keySet().stream().allMatch(header -> Collections.frequency(headers, header) == 1);
    }

    private SheetMapping mapping(SheetRow headers) {
        Map<Integer, SheetMapping.Use> columns = new LinkedHashMap<>();
        for (int place = 0; place < headers.cells().size(); place++) {
            SheetMapping.Use use = uses.get(header(headers.cell(place)));
            if (use != null) {
                columns.put(place, use);
            }
        }
        return new SheetMapping(headers.number(), columns);
    }

    /** As text: the kind, then a line for each column with header and, where it is used, what it holds and unit system, parted by tabs. */
    public String text() {
        return kind + "\n" + headers.stream().map(this::line).collect(Collectors.joining("\n")) + "\n";
    }

    private String line(String header) {
        SheetMapping.Use use = uses.get(header);
        return use == null ? header : String.join(BETWEEN, header, use.id(), use.system().name());
    }

    /** Reads what {@link #text} wrote; empty for anything else. */
    public static Optional<SheetMemory> parse(String text) {
        List<String> lines = text.lines().toList();
        if (lines.isEmpty() || SheetKind.byId(lines.get(0)).isEmpty()) {
            return Optional.empty();
        }
        List<String> headers = new ArrayList<>();
        Map<String, SheetMapping.Use> uses = new LinkedHashMap<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] parts = line.split(BETWEEN);
            Optional<UnitSystem> system = parts.length == 3 ? system(parts[2]) : Optional.empty();
            if (parts.length != 1 && system.isEmpty()) {
                return Optional.empty();
            }
            headers.add(parts[0]);
            system.ifPresent(s -> uses.put(parts[0], new SheetMapping.Use(parts[1], s)));
        }
        return Optional.of(new SheetMemory(lines.get(0), headers, uses));
    }

    private static Optional<UnitSystem> system(String name) {
        return List.of(UnitSystem.values()).stream().filter(s -> s.name().equals(name)).findFirst();
    }
}
