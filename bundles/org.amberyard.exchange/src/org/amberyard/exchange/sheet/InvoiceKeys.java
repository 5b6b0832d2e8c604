package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What tells invoices apart: their number, which may stand in one row only, else all that they say and their order among equal ones. So two
 * deliveries of a day count as two, and a file that is read again counts as before.
 */
final class InvoiceKeys {
    private final RowKeys numbers;
    private final String number;
    private final List<String> columns;
    private final Map<List<String>, List<Integer>> unnumbered = new LinkedHashMap<>();

    /**
     * @param numbers numbers that were met
     * @param number id of the column of numbers
     * @param columns ids of the columns that tell others apart
     */
    InvoiceKeys(RowKeys numbers, String number, List<String> columns) {
        this.numbers = numbers;
        this.number = number;
        this.columns = List.copyOf(columns);
    }

    /** What tells the invoice of a row from all others. */
    String of(MappedRow row) throws CellFault {
        if (row.has(number)) {
            return numbers.of(row);
        }
        List<String> said = columns.stream().map(id -> row.cell(id).text()).toList();
        List<Integer> rows = unnumbered.computeIfAbsent(said, k -> new ArrayList<>());
        rows.add(row.number());
        return String.join("|", said) + "|" + rows.size();
    }

    /** Which invoices have no number, and which of them say the same. */
    List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        int count = unnumbered.values().stream().mapToInt(List::size).sum();
        if (count > 0) {
            remarks.add(count + (count == 1 ? " invoice has" : " invoices have") + " no number; such are told apart by date, tank, fuel, quantity and total, "
                    + "and equal ones by their order.");
        }
        unnumbered.values().stream().filter(rows -> rows.size() > 1).forEach(rows -> remarks.add("Rows " + rows.get(0) + " and " + rows.get(1)
                + (rows.size() > 2 ? " and " + (rows.size() - 2) + " more" : "")
                + " say the same without a number of an invoice, and each counts; delete what stands there twice."));
        return remarks;
    }
}
