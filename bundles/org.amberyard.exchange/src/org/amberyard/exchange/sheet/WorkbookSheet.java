package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Takes the cells out of a sheet's part of a workbook as it is parsed. */
final class WorkbookSheet extends DefaultHandler {
    private static final int TOLD_EVERY = 1000;
    private static final int MOST_MERGES = 20_000;
    private static final int LISTED = 8;

    private final SharedTexts texts;
    private final CellFormats formats;
    private final ReadingBudget budget;
    private final IntConsumer progress;
    private final TreeMap<Integer, TreeMap<Integer, SheetCell>> rows = new TreeMap<>();
    private final List<CellRangeAddress> merged = new ArrayList<>();
    private final StringBuilder value = new StringBuilder();
    private CellAddress at;
    private String type = "";
    private int style;
    private int row;
    private int nextColumn;
    private boolean reading;
    private boolean formula;
    private int merges;

    WorkbookSheet(SharedTexts texts, CellFormats formats, ReadingBudget budget, IntConsumer progress) {
        this.texts = texts;
        this.formats = formats;
        this.budget = budget;
        this.progress = progress;
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) {
        switch (local) {
            case "row" -> startRow(attributes.getValue("r"));
            case "c" -> startCell(attributes);
            case "v", "t" -> reading = true;
            case "f" -> formula = true;
            case "mergeCell" -> merge(CellRangeAddress.valueOf(attributes.getValue("ref")));
            default -> {
                // formats, widths and pictures say nothing about the cells
            }
        }
    }

    /** A cell merged over columns only stands in the first of them. */
    private void merge(CellRangeAddress range) {
        if (merges++ == MOST_MERGES) {
            throw new TooMuch("A sheet has more than 20,000 merged ranges; split them, or copy the values into a sheet without any.");
        }
        if (range.getFirstColumn() == range.getLastColumn() && range.getLastRow() > range.getFirstRow()) {
            merged.add(range);
        }
    }

    private void startRow(String number) {
        row = number == null ? row + 1 : Integer.parseInt(number);
        nextColumn = 0;
    }

    private void startCell(Attributes attributes) {
        String reference = attributes.getValue("r");
        at = reference == null ? new CellAddress(row - 1, nextColumn) : new CellAddress(reference);
        nextColumn = at.getColumn() + 1;
        type = attributes.getValue("t") == null ? "n" : attributes.getValue("t");
        style = attributes.getValue("s") == null ? -1 : Integer.parseInt(attributes.getValue("s"));
        formula = false;
        value.setLength(0);
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        if (reading) {
            value.append(characters, start, length);
            budget.cell(() -> "Cell " + at.formatAsString(), value.length());
        }
    }

    @Override
    public void endElement(String uri, String local, String qualified) {
        if (local.equals("v") || local.equals("t")) {
            reading = false;
        } else if (local.equals("c")) {
            add(cell());
        }
    }

    private SheetCell cell() {
        String text = value.toString();
        return switch (type) {
            case "s" -> text.isEmpty() ? SheetCell.BLANK : SheetCell.ofText(texts.get(Integer.parseInt(text)));
            case "e" -> new SheetCell(SheetCell.Kind.ERROR, text);
            case "b" -> new SheetCell(SheetCell.Kind.TEXT, text.equals("1") ? "yes" : "no");
            case "d" -> new SheetCell(SheetCell.Kind.DATE, text.replace('T', ' ').replaceFirst(":00(\\.0+)?Z?$", ""));
            case "n" -> number(text);
            default -> SheetCell.ofText(text);
        };
    }

    private SheetCell number(String text) {
        if (text.isEmpty()) {
            return formula ? new SheetCell(SheetCell.Kind.ERROR, "formula without a result") : SheetCell.BLANK;
        }
        return formats.cell(Double.parseDouble(text), style);
    }

    private void add(SheetCell cell) {
        if (cell.isBlank()) {
            return;
        }
        if (at.getColumn() >= SheetReader.MOST_COLUMNS) {
            throw new TooMuch("Cell " + at.formatAsString() + " lies beyond the 300th column; at most 300 columns are read.");
        }
        boolean first = !rows.containsKey(at.getRow());
        if (first && rows.size() == SheetReader.MOST_ROWS) {
            throw new TooMuch("A sheet has more than 100,000 rows; split it or remove what is not needed.");
        }
        if (first && rows.size() % TOLD_EVERY == 0) {
            progress.accept(rows.size());
        }
        if (cell.kind() == SheetCell.Kind.TEXT && !type.equals("s")) {
            budget.text(() -> "Cell " + at.formatAsString(), cell.text().length());
        }
        put(at.getRow(), at.getColumn(), cell);
    }

    /** Blank cells up to a cell are held too. */
    private void put(int rowIndex, int column, SheetCell cell) {
        TreeMap<Integer, SheetCell> cells = rows.computeIfAbsent(rowIndex, r -> new TreeMap<>());
        budget.cells(Math.max(0, column - (cells.isEmpty() ? -1 : cells.lastKey())));
        cells.put(column, cell);
    }

    /**
     * The rows in which something stands; a cell merged over several rows stands in each of them.
     *
     * @throws TooMuch when merged ranges overlap
     */
    List<SheetRow> rows() {
        merged.sort(Comparator.comparingInt(CellRangeAddress::getFirstColumn).thenComparingInt(CellRangeAddress::getFirstRow));
        for (int i = 1; i < merged.size(); i++) {
            if (merged.get(i - 1).intersects(merged.get(i))) {
                throw new TooMuch("The merged ranges " + merged.get(i - 1).formatAsString() + " and " + merged.get(i).formatAsString()
                        + " overlap; split them in a spreadsheet program and save the workbook again.");
            }
        }
        merged.forEach(this::spread);
        return rows.entrySet().stream().map(e -> new SheetRow(e.getKey() + 1, cells(e.getValue()))).toList();
    }

    private void spread(CellRangeAddress range) {
        int column = range.getFirstColumn();
        SheetCell top = rows.getOrDefault(range.getFirstRow(), new TreeMap<>()).get(column);
        if (top != null) {
            List.copyOf(rows.subMap(range.getFirstRow(), true, range.getLastRow(), true).keySet()).forEach(r -> put(r, column, top));
        }
    }

    private static List<SheetCell> cells(TreeMap<Integer, SheetCell> filled) {
        List<SheetCell> cells = new ArrayList<>();
        for (int column = 0; column <= filled.lastKey(); column++) {
            cells.add(filled.getOrDefault(column, SheetCell.BLANK));
        }
        return cells;
    }

    /** What was done beside reading. */
    List<String> remarks() {
        String ranges = merged.stream().limit(LISTED).map(CellRangeAddress::formatAsString).collect(Collectors.joining(", "));
        String more = merged.size() <= LISTED ? "" : " and " + (merged.size() - LISTED) + " more";
        return ranges.isEmpty() ? List.of() : List.of("Cells merged over several rows count for each of them: " + ranges + more + ".");
    }
}
