package org.amberyard.workbench.handlers;

import java.util.List;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.eclipse.osgi.util.NLS;

/** The problems of an import as a text that fits into a dialog. */
final class Problems {
    private static final int MOST_SHOWN = 8;

    private Problems() {
    }

    static String of(ImportException refusal) {
        List<ImportProblem> problems = refusal.problems();
        StringBuilder text = new StringBuilder();
        problems.stream().limit(MOST_SHOWN).forEach(p -> text.append(p).append('\n'));
        return problems.size() <= MOST_SHOWN ? text.toString()
                : text.append(NLS.bind(Messages.Import_more, problems.size() - MOST_SHOWN)).toString();
    }
}
