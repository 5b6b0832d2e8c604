package org.amberyard.workbench.sheets;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.exchange.sheet.SheetAmendments;
import org.amberyard.exchange.sheet.SheetColumn;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.exchange.sheet.SheetKind;
import org.amberyard.exchange.sheet.SheetMapping;
import org.amberyard.exchange.sheet.SheetRow;
import org.amberyard.exchange.sheet.SheetsTogether;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyUnits;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What is chosen in the dialog: the sheet, what it holds, its row of headers, and which column is which. */
final class TableChoice {
    private static final int MOST_EXAMPLES = 3;

    private final Study original;
    private final List<Sheet> sheets;
    private Study study;
    private SheetImport made;
    private final Map<Sheet, SheetAmendments> amendments = new IdentityHashMap<>();
    private boolean corrected;
    private Optional<SheetsTogether> together = Optional.empty();

    /** @param original the study, of which a copy is made when the first sheet is looked at */
    TableChoice(Study original, List<Sheet> sheets) {
        this.original = original;
        this.sheets = List.copyOf(sheets);
    }

    /** A column of the sheet. */
    record Column(int place, String header, String examples) {
    }

    /** A copy of the study, which only this dialog uses; made in the background, while the dialog keeps everybody from editing. */
    synchronized Study study() {
        if (study == null) {
            study = EcoreUtil.copy(original);
        }
        return study;
    }

    List<Sheet> sheets() {
        return sheets;
    }

    /** What is chosen so far; null until the first sheet was looked at. */
    SheetImport made() {
        return made;
    }

    /** Takes what was found in the background. */
    void take(SheetImport found) {
        made = found.amended(amendments.getOrDefault(found.sheet(), SheetAmendments.NONE));
        together = together.map(t -> t.with(made));
    }

    /** Mends cells of the sheet, or leaves rows out, whatever else is chosen for it. */
    void amend(SheetAmendments amended) {
        amendments.put(made.sheet(), amended);
        take(made);
    }

    /** The sheets that can be read in one go with the one that is chosen, if there are such. */
    Optional<SheetsTogether> together() {
        return together.filter(t -> t.has(made.sheet()));
    }

    /** Takes the sheet that a problem is of, which must be one of those that are read together; its place among the sheets. */
    int turnTo(ImportProblem problem) {
        SheetImport part = together.orElseThrow().parts().stream().filter(p -> p.sheet().place().equals(problem.file())).findFirst().orElse(made);
        made = part;
        return sheets.indexOf(part.sheet());
    }

    /** Name of the sheet that a problem is of. */
    String sheetOf(ImportProblem problem) {
        return sheets.stream().filter(s -> s.place().equals(problem.file())).map(Sheet::name).findFirst().orElse("");
    }

    /** True when somebody has said what a column holds, or in which unit. */
    boolean isCorrected() {
        return corrected;
    }

    /** Another sheet: as it was said to be before, else as it tells by itself, else as a list of buses. */
    SheetImport sheet(int place, ReadingProgress progress) {
        Sheet sheet = sheets.get(place);
        if (together.isEmpty() && made == null) {
            together = SheetsTogether.of(sheets, study());
            together.ifPresent(t -> t.parts().forEach(p -> SheetMemories.on(p.sheet()).filter(m -> m.kind().id().equals(p.kind().id()))
                    .ifPresent(m -> together = together.map(all -> all.with(m)))));
        }
        Optional<SheetImport> part = together.flatMap(t -> t.parts().stream().filter(p -> p.sheet() == sheet).findFirst());
        if (part.isPresent()) {
            return part.get();
        }
        return SheetMemories.on(sheet).or(() -> SheetImport.recognised(sheet, study(), progress))
                .orElseGet(() -> SheetImport.of(SheetKind.ALL.get(0), sheet, study()));
    }

    /** The same sheet as one of another kind. */
    SheetImport kind(SheetKind kind) {
        return SheetImport.of(kind, made.sheet(), study());
    }

    /** Numbers of the rows in which headers may stand. */
    List<Integer> rowNumbers() {
        return made.sheet().rows().stream().map(SheetRow::number).toList();
    }

    /** The same sheet with its headers in another row. */
    SheetImport headerRow(int number) {
        return SheetImport.withHeaders(made.kind(), made.sheet(), number, study());
    }

    /** Says what a column holds; nothing where it is not to be used. */
    void use(int place, Optional<SheetColumn> column) {
        corrected = true;
        take(made.with(made.mapping().with(place, column.map(c -> new SheetMapping.Use(c.id(), system(place))))));
    }

    void system(int place, UnitSystem system) {
        corrected = true;
        SheetMapping.Use use = made.mapping().columns().get(place);
        take(made.with(made.mapping().with(place, Optional.of(new SheetMapping.Use(use.id(), system)))));
    }

    private UnitSystem system(int place) {
        SheetMapping.Use use = made.mapping().columns().get(place);
        return use == null ? StudyUnits.of(study()) : use.system();
    }

    /** What a column holds. */
    Optional<SheetColumn> use(int place) {
        return Optional.ofNullable(made.mapping().columns().get(place))
                .flatMap(use -> made.kind().columns(study()).stream().filter(c -> c.id().equals(use.id())).findFirst());
    }

    /** Unit of the numbers of a column that is used; empty for others. */
    String unit(int place) {
        return use(place).map(c -> c.unit().symbol(system(place), StudyUnits.currency(study()))).orElse("");
    }

    /** Units that the numbers of a column may have. */
    List<String> units(int place) {
        return use(place).map(c -> List.of(UnitSystem.values()).stream().map(s -> c.unit().symbol(s, StudyUnits.currency(study())))
                .filter(s -> !s.isEmpty()).distinct().toList()).orElse(List.of());
    }

    /** The columns of the sheet in which something stands. */
    List<Column> columns() {
        List<Column> columns = new ArrayList<>();
        if (made == null) {
            return columns;
        }
        SheetRow headers = made.sheet().rows().stream().filter(r -> r.number() == made.mapping().headerRow()).findFirst()
                .orElse(made.sheet().rows().get(0));
        int width = made.sheet().rows().stream().mapToInt(r -> r.cells().size()).max().orElse(0);
        for (int place = 0; place < width; place++) {
            String examples = examples(place);
            if (!headers.cell(place).isBlank() || !examples.isEmpty()) {
                columns.add(new Column(place, headers.cell(place).text(), examples));
            }
        }
        return columns;
    }

    private String examples(int place) {
        return String.join(" | ", made.sheet().rows().stream().filter(r -> r.number() > made.mapping().headerRow()).map(r -> r.cell(place))
                .filter(c -> !c.isBlank()).map(c -> c.text()).limit(MOST_EXAMPLES).toList());
    }
}
