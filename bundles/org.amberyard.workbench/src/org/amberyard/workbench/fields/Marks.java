package org.amberyard.workbench.fields;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.validation.Finding;
import org.amberyard.study.InputSource;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/** What the findings say about single cells. */
public final class Marks {

    private record Place(EObject element, EStructuralFeature feature) {
    }

    private final StudySession session;
    private List<Finding> indexed = List.of();
    private Map<Place, CellMark> marks = Map.of();
    private Map<EObject, CellMark> wholes = Map.of();
    private Function<EObject, Optional<CellMark>> also = element -> Optional.empty();

    /** Marks by the findings of a study. */
    public Marks(StudySession session) {
        this.session = session;
    }

    /** Lets more be said of elements as a whole than the findings say. */
    void also(Function<EObject, Optional<CellMark>> more) {
        also = more;
    }

    /** The gravest mark of a cell; what is said about an element as a whole marks its first cell. */
    Optional<CellMark> of(EObject element, EStructuralFeature feature, boolean first) {
        index();
        Stream<CellMark> own = Stream.ofNullable(marks.get(new Place(element, feature)));
        Stream<CellMark> whole = first ? Stream.concat(Stream.ofNullable(marks.get(new Place(element, null))), also.apply(element).stream())
                : Stream.empty();
        return Stream.concat(own, whole).reduce(Marks::graver);
    }

    /** The gravest mark of an element as a whole or any of its fields. */
    public Optional<CellMark> of(EObject element) {
        index();
        return Optional.ofNullable(wholes.get(element));
    }

    /** What is noted of an element; blank for nothing. */
    static String note(EObject element) {
        return element instanceof Sourced sourced && sourced.getNote() != null ? sourced.getNote() : "";
    }

    /** Where the value of a field came from; blank where nothing is known of it. */
    static String source(EObject element, EStructuralFeature feature) {
        InputSource source = InputSource.of(element, feature);
        return source.citation() == null ? "" : NLS.bind(Messages.Tip_source, source.words());
    }

    private void index() {
        List<Finding> findings = session.evaluation().findings();
        if (findings == indexed) {
            return;
        }
        indexed = findings;
        marks = new HashMap<>();
        wholes = new HashMap<>();
        for (Finding finding : findings) {
            CellMark mark = new CellMark(level(finding), Words.say(finding.message()));
            marks.merge(new Place(finding.element(), finding.feature()), mark, Marks::graver);
            wholes.merge(finding.element(), mark, Marks::graver);
        }
    }

    private static CellMark.Level level(Finding finding) {
        return switch (finding.severity()) {
            case ERROR -> CellMark.Level.ERROR;
            case WARNING -> CellMark.Level.WARNING;
            case INFO -> CellMark.Level.NOTICE;
        };
    }

    private static CellMark graver(CellMark a, CellMark b) {
        CellMark first = a.level().compareTo(b.level()) <= 0 ? a : b;
        return new CellMark(first.level(), a.message() + "\n" + b.message());
    }
}
