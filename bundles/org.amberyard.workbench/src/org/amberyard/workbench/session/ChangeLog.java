package org.amberyard.workbench.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.amberyard.model.study.Study;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.VariedNumber;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EContentAdapter;

/** Watches what an edit does to a study, whatever kind of command it is, and puts it into words while the names still hold. */
final class ChangeLog extends EContentAdapter {

    /** More changes of one edit nobody reads; they are counted. */
    private static final int MOST_WORDED = 400;

    private record Place(EObject element, EStructuralFeature feature) {
    }

    private record Values(String element, Object before, Object after) {
    }

    private final Study study;
    private final Map<Place, Values> values = new LinkedHashMap<>();
    private final List<Change> members = new ArrayList<>();
    private int memberCount;
    private boolean watching;

    ChangeLog(Study study) {
        this.study = study;
        study.eAdapters().add(this);
    }

    void begin() {
        values.clear();
        members.clear();
        memberCount = 0;
        watching = true;
    }

    /** What has changed since the beginning: elements that have come and gone, then values. */
    List<Change> end() {
        watching = false;
        List<Change> worded = new ArrayList<>(members);
        values.forEach((place, v) -> {
            if (worded.size() < MOST_WORDED && !Objects.equals(v.before(), v.after())) {
                worded.add(worded(place, v));
            }
        });
        return worded;
    }

    /** Number of all changes, those without words included. */
    int count() {
        return memberCount + (int) values.values().stream().filter(v -> !Objects.equals(v.before(), v.after())).count();
    }

    private Change worded(Place place, Values values) {
        FieldFormat format = FieldFormat.of(place.feature(), study, Words.model());
        return new Change(values.element(), Words.field(place.feature()).label(),
                VariedNumber.text(format, study, place.element(), place.feature(), values.before()),
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
        for (Object old : elements(notification.getOldValue())) {
            member(old, true);
        }
        for (Object come : elements(notification.getNewValue())) {
            member(come, false);
        }
    }

    private static List<?> elements(Object value) {
        return value instanceof List<?> list ? list : value instanceof EObject ? List.of(value) : List.of();
    }

    private void member(Object element, boolean gone) {
        memberCount++;
        if (members.size() < MOST_WORDED && element instanceof EObject of) {
            String name = Words.name(of);
            members.add(new Change(Words.withKind(of), "", gone ? name : "", gone ? "" : name));
        }
    }
}
