package org.amberyard.workbench.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.exchange.sheet.SheetColumn;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.exchange.sheet.SheetKind;
import org.amberyard.exchange.sheet.SheetMapping;
import org.amberyard.exchange.sheet.SheetRow;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyUnits;

/** What is chosen in the dialog: the sheet, what it holds, its row of headers, and which column is which. */
final class TableChoice {
    private static final int MOST_EXAMPLES = 3;

    private final Study study;
    private final List<Sheet> sheets;
    private SheetImport made;

    /** @param study a copy of the study, which only this dialog uses */
    TableChoice(Study study, List<Sheet> sheets) {
        this.study = study;
        this.sheets = List.copyOf(sheets);
        sheet(0);
    }

    /** A column of the sheet. */
    record Column(int place, String header, String examples) {
    }

    Study study() {
        return study;
    }

    List<Sheet> sheets() {
        return sheets;
    }

    SheetImport made() {
        return made;
    }

    /** Takes another sheet: as it was said to be before, else as it tells by itself, else as a list of buses. */
    void sheet(int place) {
        Sheet sheet = sheets.get(place);
        made = SheetMemories.on(sheet).or(() -> SheetImport.recognised(sheet, study))
                .orElseGet(() -> SheetImport.of(SheetKind.ALL.get(0), sheet, study));
    }

    void kind(SheetKind kind) {
        made = SheetImport.of(kind, made.sheet(), study);
    }

    /** Numbers of the rows in which headers may stand. */
    List<Integer> rowNumbers() {
        return made.sheet().rows().stream().map(SheetRow::number).toList();
    }

    void headerRow(int number) {
        made = SheetImport.withHeaders(made.kind(), made.sheet(), number, study);
    }

    /** Says what a column holds; nothing where it is not to be used. */
    void use(int place, Optional<SheetColumn> column) {
        made = made.with(made.mapping().with(place, column.map(c -> new SheetMapping.Use(c.id(), system(place)))));
    }

    void system(int place, UnitSystem system) {
        SheetMapping.Use use = made.mapping().columns().get(place);
        made = made.with(made.mapping().with(place, Optional.of(new SheetMapping.Use(use.id(), system))));
    }

    private UnitSystem system(int place) {
        SheetMapping.Use use = made.mapping().columns().get(place);
        return use == null ? StudyUnits.of(study) : use.system();
    }

    /** What a column holds. */
    Optional<SheetColumn> use(int place) {
        return Optional.ofNullable(made.mapping().columns().get(place))
                .flatMap(use -> made.kind().columns(study).stream().filter(c -> c.id().equals(use.id())).findFirst());
    }

    /** Unit of the numbers of a column that is used; empty for others. */
    String unit(int place) {
        return use(place).map(c -> c.unit().symbol(system(place), StudyUnits.currency(study))).orElse("");
    }

    /** Units that the numbers of a column may have. */
    List<String> units(int place) {
        return use(place).map(c -> List.of(UnitSystem.values()).stream().map(s -> c.unit().symbol(s, StudyUnits.currency(study)))
                .filter(s -> !s.isEmpty()).distinct().toList()).orElse(List.of());
    }

    /** The columns of the sheet in which something stands. */
    List<Column> columns() {
        List<Column> columns = new ArrayList<>();
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
