package org.amberyard.report.papers;

import java.util.List;
import java.util.Optional;
import org.amberyard.report.document.Paper;

/**
 * What the maker of documents chooses.
 *
 * @param tables tables of the grant set, in the order wanted
 * @param programme name of the programme that is applied to; empty for the one that pays most
 * @param wholeVins true for the agency's copy, which shows vehicle numbers in full
 * @param dated date of the evaluation to print; empty for none, so that the same study gives the same files
 * @param paper paper that documents are laid out for
 */
public record PaperChoices(List<GrantTable> tables, Optional<String> programme, boolean wholeVins, Optional<String> dated, Paper paper) {

    /** All tables, a public copy, without a date. */
    public static final PaperChoices STANDARD = new PaperChoices(List.of(GrantTable.values()), Optional.empty(), false,
            Optional.empty(), Paper.LETTER);

    /** On letter paper. */
    public PaperChoices(List<GrantTable> tables, Optional<String> programme, boolean wholeVins, Optional<String> dated) {
        this(tables, programme, wholeVins, dated, Paper.LETTER);
    }

    /** The same for an application to another programme. */
    PaperChoices with(Optional<String> other) {
        return new PaperChoices(tables, other, wholeVins, dated, paper);
    }

    public PaperChoices {
        tables = List.copyOf(tables);
    }
}
