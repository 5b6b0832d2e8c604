package org.amberyard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.units.Unit;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.StudyPackage;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** A study with elements of every kind that has a table, no field of which is left at its default; it need not make sense. */
final class EveryElement {
    private static final double PART = 0.371_234_567_890_123;
    private static final int SIX_FIFTEEN = 375;

    private final Study study = StudyFactory.eINSTANCE.createStudy();
    private int made;

    private EveryElement() {
    }

    static Study study() {
        EveryElement every = new EveryElement();
        StudyTables.ALL.forEach(every::rows);
        List<EObject> all = all(every.study);
        all.forEach(every::fill);
        all.forEach(every::point);
        every.study.getSettings().setCurrency("EUR");
        return every.study;
    }

    private static List<EObject> all(Study study) {
        List<EObject> all = new ArrayList<>(List.of(study));
        study.eAllContents().forEachRemaining(all::add);
        return all;
    }

    /** Two rows for each owner, one where only their kind tells them apart; what an owner holds one of stays what it is. */
    private void rows(StudyTable table) {
        if (table.path().isEmpty()) {
            return;
        }
        EReference holder = table.path().get(table.path().size() - 1);
        for (EObject owner : table.owners(study)) {
            boolean byName = table.type().getEStructuralFeature("name") != null || table.type().getEAllContainments().size() < 2;
            for (int row = 0; holder.isMany() && row < (byName ? 2 : 1); row++) {
                table.addRow(owner);
            }
            if (!holder.isMany() && owner.eGet(holder) == null) {
                table.addRow(owner);
            }
        }
    }

    private void fill(EObject element) {
        for (EAttribute field : element.eClass().getEAllAttributes()) {
            if (field != StudyPackage.Literals.STUDY__FORMAT_VERSION) {
                element.eSet(field, value(field));
            }
        }
    }

    private Object value(EAttribute field) {
        Class<?> java = field.getEType().getInstanceClass();
        if (field.getEType() instanceof EEnum choices) {
            return choices.getELiterals().get(choices.getELiterals().size() - 1).getInstance();
        }
        if (java == boolean.class) {
            return !(Boolean) field.getDefaultValue();
        }
        if (java == String.class) {
            made++;
            return field.getName().equals("name") ? "Name, the “" + made + "th”" : "Text \"" + made + "\",\nof two lines";
        }
        return number(field, java);
    }

    private static Object number(EAttribute field, Class<?> java) {
        FieldInfo info = FieldInfo.of(field);
        double min = info.min().orElse(info.above().orElse(0));
        double figure = min + PART * (info.max().orElse(min + 100) - min);
        if (java != int.class && java != Integer.class) {
            return figure;
        }
        Unit unit = Unit.ofToken(info.unitToken()).orElse(Unit.ONE);
        return unit == Unit.CLOCK ? SIX_FIFTEEN : (int) Math.ceil(figure);
    }

    /** References lead to the last element that they may lead to. */
    @SuppressWarnings("unchecked")
    private void point(EObject element) {
        for (EReference field : element.eClass().getEAllReferences()) {
            List<EObject> fitting = all(study).stream().filter(field.getEReferenceType()::isInstance).toList();
            if (!field.isContainment() && !field.isContainer() && !fitting.isEmpty()) {
                EObject last = fitting.get(fitting.size() - 1);
                if (field.isMany()) {
                    ((List<EObject>) element.eGet(field)).add(last);
                } else {
                    element.eSet(field, last);
                }
            }
        }
    }

    /** Holds two studies against each other, field by field; numbers may differ in what conversions of units lose. */
    static void assertSame(Study one, Study other) {
        List<EObject> ones = all(one);
        List<EObject> others = all(other);
        assertEquals(ones.stream().map(EObject::eClass).toList(), others.stream().map(EObject::eClass).toList());
        for (int i = 0; i < ones.size(); i++) {
            for (EStructuralFeature field : ones.get(i).eClass().getEAllStructuralFeatures()) {
                if (!(field instanceof EReference reference && reference.isContainment())) {
                    assertSame(ones.get(i), ones.get(i).eGet(field), others.get(i).eGet(field), field);
                }
            }
        }
    }

    private static void assertSame(EObject of, Object value, Object other, EStructuralFeature field) {
        String where = ElementNames.withKind(of) + ", " + field.getName();
        if (value instanceof Double number && other instanceof Double read) {
            assertEquals(number, read, 1e-14 * Math.abs(number), where);
        } else if (value instanceof List<?> several) {
            assertEquals(several.stream().map(e -> path((EObject) e)).toList(), ((List<?>) other).stream().map(e -> path((EObject) e)).toList(), where);
        } else if (value instanceof EObject element) {
            assertEquals(path(element), path((EObject) other), where);
        } else {
            assertEquals(value, other, where);
        }
    }

    private static String path(EObject element) {
        return element == null ? "" : EcoreUtil.getRelativeURIFragmentPath(null, element);
    }
}
