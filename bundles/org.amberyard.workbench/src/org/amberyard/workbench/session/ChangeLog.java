package org.amberyard.workbench.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.InputSource;
import org.amberyard.study.VariedNumber;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.eclipse.osgi.util.NLS;

/**
 * Watches what an edit does to a study, whatever kind of command it is, and puts it into words while the names still hold. That the source
 * of a value is another one is part of the change of the value, and no change besides.
 */
final class ChangeLog extends EContentAdapter {

    /** More changes of one edit nobody reads; they are counted. */
    private static final int MOST_WORDED = 400;

    private record Place(EObject element, EStructuralFeature feature) {
    }

    private record Values(String element, Object before, Object after) {
        boolean differ() {
            return !Objects.equals(before, after);
        }
    }

    /** An element that has come or gone; what has gone is put into words at once, but where there are too many. */
    private record Member(EObject holder, EObject element, boolean gone, Optional<Change> whenGone) {
        /** What has come is often named by a later part of the same edit. */
        Optional<Change> words() {
            return gone ? whenGone : Optional.of(worded(element, false));
        }
    }

    private final Study study;
    private final Map<Place, Values> values = new LinkedHashMap<>();
    private final List<Member> members = new ArrayList<>();
    private int count;
    private boolean watching;

    ChangeLog(Study study) {
        this.study = study;
        study.eAdapters().add(this);
    }

    void begin() {
        values.clear();
        members.clear();
        watching = true;
    }

    /** What has changed since the beginning: elements that have come and gone, then values. */
    List<Change> end() {
        watching = false;
        values.values().removeIf(v -> !v.differ());
        Set<EObject> moved = members.stream().map(Member::element).collect(Collectors.toSet());
        values.keySet().removeIf(p -> isWithin(p.element(), moved));
        members.removeIf(m -> isWithin(m.holder(), moved));
        Set<EObject> changed = values.keySet().stream().map(Place::element).collect(Collectors.toSet());
        members.removeIf(m -> m.element() instanceof SourceNote note && isPart(note, m.holder(), changed));
        values.keySet().removeIf(p -> p.element() instanceof SourceNote note && isPart(note, note.eContainer(), changed));
        count = members.size() + values.size();
        Stream<Change> elements = members.stream().flatMap(m -> m.words().stream());
        return Stream.concat(elements, values.entrySet().stream().map(e -> worded(e.getKey(), e.getValue()))).limit(MOST_WORDED).toList();
    }

    /** True for what an element holds that has come or gone, which is one change. */
    private static boolean isWithin(EObject element, Set<EObject> members) {
        return Stream.iterate(element, Objects::nonNull, EObject::eContainer).anyMatch(members::contains);
    }

    /** True when a value has changed of which a note tells the source. */
    private boolean isPart(SourceNote note, EObject holder, Set<EObject> changed) {
        return SourceNotes.EVERY_FIELD.equals(note.getField()) ? changed.contains(holder)
                : holder != null && values.containsKey(new Place(holder, holder.eClass().getEStructuralFeature(note.getField())));
    }

    /** Number of all changes, those without words included. */
    int count() {
        return count;
    }

    private Change worded(Place place, Values values) {
        FieldFormat format = FieldFormat.of(place.feature(), study, Words.model());
        String field = Words.field(place.feature()).label();
        String before = VariedNumber.shown(format, study, place.element(), place.feature(), values.before());
        String after = VariedNumber.shown(format, study, place.element(), place.feature(), values.after());
        if (InputSource.isDefault(place.element(), place.feature())) {
            after = NLS.bind(Messages.Step_default, after);
        }
        // What differs in digits only that nobody reads is told with all of them.
        return !before.equals(after) ? new Change(values.element(), field, before, after)
                : new Change(values.element(), field, VariedNumber.text(format, study, place.element(), place.feature(), values.before()),
                        VariedNumber.text(format, study, place.element(), place.feature(), values.after()));
    }

    @Override
    public void notifyChanged(Notification notification) {
        super.notifyChanged(notification);
        boolean touches = watching && !notification.isTouch() && notification.getNotifier() instanceof EObject
                && notification.getFeature() instanceof EStructuralFeature;
        if (touches) {
            note(notification, (EObject) notification.getNotifier(), (EStructuralFeature) notification.getFeature());
        }
    }

    private void note(Notification notification, EObject element, EStructuralFeature feature) {
        if (feature instanceof EReference reference && reference.isContainment()) {
            member(notification);
        } else if (feature.isMany()) {
            List<?> now = List.copyOf((List<?>) element.eGet(feature));
            value(element, feature, before(now, notification), now);
        } else {
            value(element, feature, notification.getOldValue(), notification.getNewValue());
        }
    }

    private static List<?> before(List<?> now, Notification notification) {
        List<Object> before = new ArrayList<>(now);
        int at = notification.getPosition();
        if (notification.getEventType() == Notification.ADD) {
            before.remove(at);
        } else if (notification.getEventType() == Notification.REMOVE) {
            before.add(at, notification.getOldValue());
        } else if (notification.getEventType() == Notification.SET) {
            before.set(at, notification.getOldValue());
        } else if (notification.getEventType() == Notification.ADD_MANY) {
            before.removeAll((List<?>) notification.getNewValue());
        } else if (notification.getOldValue() instanceof List<?> gone) {
            before.addAll(gone);
        }
        return List.copyOf(before);
    }

    /** The first value before and the last one after count, however often a field is set on the way. */
    private void value(EObject element, EStructuralFeature feature, Object before, Object after) {
        Place place = new Place(element, feature);
        Values known = values.get(place);
        values.put(place, known == null ? new Values(Words.withKind(element), before, after)
                : new Values(known.element(), known.before(), after));
    }

    private void member(Notification notification) {
        EObject holder = (EObject) notification.getNotifier();
        elements(notification.getOldValue()).forEach(gone -> member(holder, gone, true));
        elements(notification.getNewValue()).forEach(come -> member(holder, come, false));
    }

    private static List<EObject> elements(Object value) {
        List<?> all = value instanceof List<?> list ? list : Stream.ofNullable(value).toList();
        return all.stream().filter(EObject.class::isInstance).map(EObject.class::cast).toList();
    }

    private void member(EObject holder, EObject element, boolean gone) {
        boolean now = gone && members.size() < MOST_WORDED;
        members.add(new Member(holder, element, gone, now ? Optional.of(worded(element, true)) : Optional.empty()));
    }

    private static Change worded(EObject element, boolean gone) {
        String name = Words.name(element);
        return new Change(Words.withKind(element), "", gone ? name : "", gone ? "" : name);
    }
}
