package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Sheets of a workbook that each tell the runs of a part of the day, to be put into a study in one go: all of them or none.
 *
 * @param parts the sheets, each as it is to be read
 */
public record SheetsTogether(List<SheetImport> parts) {
    private static final String ROUTES = "routes";

    public SheetsTogether {
        parts = List.copyOf(parts);
    }

    /** The route sheets among some whose names say morning, midday or afternoon; empty where fewer than two parts of the day are told. */
    public static Optional<SheetsTogether> of(List<Sheet> sheets, Study study) {
        List<SheetImport> parts = sheets.stream().filter(s -> DayPart.inName(s.name()).isPresent()).map(s -> SheetImport.recognised(s, study))
                .flatMap(Optional::stream).filter(p -> p.kind().id().equals(ROUTES)).toList();
        long told = parts.stream().map(p -> DayPart.inName(p.sheet().name())).distinct().count();
        return told > 1 ? Optional.of(new SheetsTogether(parts)) : Optional.empty();
    }

    /** Names of the sheets in words. */
    public String names() {
        return parts.stream().map(p -> p.sheet().name()).collect(Collectors.joining(", "));
    }

    /** The same with another reading of one of its sheets; others stay. */
    public SheetsTogether with(SheetImport part) {
        return new SheetsTogether(parts.stream().map(p -> p.sheet() == part.sheet() ? part : p).toList());
    }

    /** True when a sheet is one of them. */
    public boolean has(Sheet sheet) {
        return parts.stream().anyMatch(p -> p.sheet() == sheet);
    }

    /**
     * What all of them would do to a study, which stays as it is; problems, changes and remarks name their sheet.
     *
     * @param progress told of the rows, and asked whether to go on
     * @throws CancellationException when it is not to go on
     */
    public SheetImport.Preview preview(Study study, ReadingProgress progress) {
        Study tried = EcoreUtil.copy(study);
        List<ImportProblem> problems = new ArrayList<>();
        List<SheetChange> changes = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        List<SheetEdits> edits = new ArrayList<>();
        List<RowTally> rows = new ArrayList<>();
        for (SheetImport part : parts) {
            SheetImport.Preview preview = besideOthers(part).preview(tried, progress);
            preview.doTo(tried);
            problems.addAll(preview.problems());
            changes.addAll(preview.changes());
            preview.remarks().forEach(r -> remarks.add("Sheet “" + part.sheet().name() + "”: " + r));
            edits.addAll(preview.edits());
            rows.add(preview.rows());
        }
        return new SheetImport.Preview(problems, changes, remarks, edits, RowTally.of(rows));
    }

    /** A sheet that knows of which routes the others tell the other runs. */
    private SheetImport besideOthers(SheetImport part) {
        if (!part.kind().id().equals(ROUTES)) {
            return part;
        }
        Map<DayPart, Set<ElementKey>> elsewhere = new EnumMap<>(DayPart.class);
        parts.stream().filter(p -> p != part).forEach(p -> DayPart.inName(p.sheet().name()).ifPresent(
                d -> elsewhere.computeIfAbsent(d, k -> new HashSet<>()).addAll(routes(p))));
        return new SheetImport(new RouteSheet(elsewhere), part.sheet(), part.mapping(), part.amended());
    }

    private static Set<ElementKey> routes(SheetImport part) {
        return part.mapping().place(RouteSheet.KEY).stream().boxed().flatMap(place -> part.sheet().column(place, part.mapping().headerRow()))
                .map(c -> ElementKey.of(DayPart.without(c.text()))).collect(Collectors.toSet());
    }
}
