package org.amberyard.report.papers;

import java.util.List;
import java.util.Optional;

/**
 * What the maker of documents chooses.
 *
 * @param tables tables of the grant set, in the order wanted
 * @param programme name of the programme that is applied to; empty for the one that pays most
 * @param wholeVins true for the agency's copy, which shows vehicle numbers in full
 * @param dated date of the evaluation to print; empty for none, so that the same study gives the same files
 */
public record PaperChoices(List<GrantTable> tables, Optional<String> programme, boolean wholeVins, Optional<String> dated) {

    /** All tables, a public copy, without a date. */
    public static final PaperChoices STANDARD = new PaperChoices(List.of(GrantTable.values()), Optional.empty(), false,
            Optional.empty());

    public PaperChoices {
        tables = List.copyOf(tables);
    }
}
