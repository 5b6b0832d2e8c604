package org.amberyard.exchange.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.amberyard.study.StudyFindings;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What was read held against the rules of the study: what rows make wrong there is wrong with the rows. What may only follow from a cell that
 * could not be read is not told.
 *
 * @param made the import
 * @param outcome what came of it
 */
record RowFindings(SheetImport made, SheetOutcome outcome) {

    /** Adds what is wrong to the problems, and what people should look at to the remarks. */
    void tell(Study before, List<ImportProblem> problems, List<String> remarks) {
        Map<Integer, Set<String>> wrong = problems.stream().collect(Collectors.groupingBy(ImportProblem::row,
                Collectors.mapping(ImportProblem::column, Collectors.toSet())));
        Set<String> known = new HashSet<>(StudyFindings.of(before).stream().map(Finding::message).toList());
        for (Finding finding : StudyFindings.of(outcome.study())) {
            Optional<Integer> row = row(finding.element());
            if (row.isPresent() && !known.contains(finding.message()) && isOfItsOwn(finding, wrong.getOrDefault(row.get(), Set.of()))
                    && !(isOfRowsTogether(finding) && !wrong.isEmpty())) {
                if (finding.severity() == Severity.ERROR || made.kind().refuses(finding)) {
                    problems.add(new ImportProblem(made.sheet().place(), row.get(), column(finding), finding.message()));
                } else {
                    remarks.add("Row " + row.get() + ": " + finding.message());
                }
            }
        }
    }

    /** True where every wrong cell of the row fills a field, and the finding is of another one. */
    private boolean isOfItsOwn(Finding finding, Set<String> headers) {
        return headers.isEmpty() || finding.feature() != null
                && headers.stream().map(this::field).allMatch(f -> f.isPresent() && f.get() != finding.feature());
    }

    /** True for what rows make together: a row that could not be read may be what is missing. */
    private boolean isOfRowsTogether(Finding finding) {
        return finding.feature() == null && made.kind().refuses(finding);
    }

    private Optional<EStructuralFeature> field(String header) {
        return columns().stream().filter(c -> made.header(c.id()).filter(header::equals).isPresent()).findFirst().flatMap(SheetColumn::field);
    }

    /** Header of the column that fills the field of a finding, else of one that tells it; empty where none does. */
    private String column(Finding finding) {
        if (finding.feature() == null) {
            return "";
        }
        Optional<String> filled = columns().stream().filter(c -> c.field().filter(finding.feature()::equals).isPresent()).findFirst()
                .flatMap(c -> made.header(c.id()));
        return filled.or(() -> made.kind().telling(finding.feature()).flatMap(made::header)).orElse("");
    }

    private List<SheetColumn> columns() {
        return made.kind().columns(outcome.study());
    }

    private Optional<Integer> row(EObject element) {
        for (EObject at = element; at != null; at = at.eContainer()) {
            if (outcome.rowOf().containsKey(at)) {
                return Optional.of(outcome.rowOf().get(at));
            }
        }
        return Optional.empty();
    }
}
