package org.amberyard.workbench.sheets;

import java.util.stream.Collectors;
import org.amberyard.exchange.sheet.RowTally;
import org.amberyard.workbench.language.Words;
import org.eclipse.osgi.util.NLS;

/** What has become of the rows of a sheet, in a line. */
final class RowWords {
    private RowWords() {
    }

    static String of(RowTally rows) {
        String why = rows.reasons().entrySet().stream().map(e -> NLS.bind(Messages.Table_why, Words.say(e.getKey()), e.getValue()))
                .collect(Collectors.joining("; "));
        String leftOut = rows.leftOut().size() + (why.isEmpty() ? "" : " (" + why + ")");
        return NLS.bind(Messages.Table_rows, new Object[] {rows.read(), rows.taken(), leftOut, rows.rejected()});
    }
}
