package org.amberyard.workbench.grid;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.workbench.language.Counted;
import org.eclipse.osgi.util.NLS;

/** Says what became of the texts of a block, of which some were refused. */
final class RefusedWords {

    private RefusedWords() {
    }

    /** @param texts number of texts of the block */
    static String of(List<CellRefusal> refused, int texts) {
        int entered = texts - refused.size();
        int kept = (int) refused.stream().filter(CellRefusal::hasRow).count();
        int lost = refused.size() - kept;
        List<String> sentences = new ArrayList<>();
        sentences.add(entered == 0 ? Messages.Refused_noneEntered
                : NLS.bind(Counted.of(entered, Messages.Refused_oneEntered, Messages.Refused_someEntered), texts, entered));
        if (kept > 0) {
            sentences.add(Counted.said(kept, Messages.Refused_one, Messages.Refused_some));
        }
        if (lost > 0) {
            sentences.add(Counted.said(lost, Messages.Refused_oneLost, Messages.Refused_someLost));
        }
        if (entered > 0) {
            sentences.add(Messages.Refused_undo);
        }
        return String.join(" ", sentences);
    }
}
