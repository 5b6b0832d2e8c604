package org.amberyard.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.FieldFormatException;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Types what is no number, or far too large a one, into every field of the model that takes numbers. */
class TypedNumbersTest {
    private static final List<Locale> LOCALES = List.of(Locale.US, Locale.GERMANY, Locale.forLanguageTag("tr"), Locale.forLanguageTag("ar"));

    /** Every numeric field of the kinds of elements that a study can hold. */
    private static List<EAttribute> numbers() {
        TreeSet<String> seen = new TreeSet<>();
        List<EAttribute> numbers = new ArrayList<>();
        collect(StudyPackage.Literals.STUDY, seen, numbers);
        return numbers;
    }

    private static void collect(EClass kind, TreeSet<String> seen, List<EAttribute> numbers) {
        if (!seen.add(kind.getName())) {
            return;
        }
        for (EAttribute field : kind.getEAttributes()) {
            if (FieldFormat.of(field, UnitSystem.US, "USD", Locale.US).isNumber()) {
                numbers.add(field);
            }
        }
        kind.getESuperTypes().forEach(parent -> collect(parent, seen, numbers));
        kind.getEReferences().stream().filter(EReference::isContainment).forEach(r -> collect(r.getEReferenceType(), seen, numbers));
        kindsOf(kind).forEach(heir -> collect(heir, seen, numbers));
    }

    private static List<EClass> kindsOf(EClass parent) {
        EPackage home = parent.getEPackage();
        return home.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(kind -> kind.getESuperTypes().contains(parent)).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "∞", "1e400", "1e308", "-1e308", "0x1p3", "1,2,3", "1..2", "--5", "1e", "١e٥"})
    void nothingOfItIsTaken(String typed) {
        List<EAttribute> numbers = numbers();
        assertTrue(numbers.size() > 300, () -> numbers.size() + " fields");
        List<String> taken = new ArrayList<>();
        for (EAttribute field : numbers) {
            for (UnitSystem system : UnitSystem.values()) {
                for (Locale locale : LOCALES) {
                    if (isTaken(field, system, locale, typed)) {
                        taken.add(field.getEContainingClass().getName() + "." + field.getName() + " " + system + " " + locale);
                    }
                }
            }
        }
        assertEquals(List.of(), taken);
    }

    /** Either the text is refused by the field's name, or the limits of the field refuse the number. */
    private static boolean isTaken(EAttribute field, UnitSystem system, Locale locale, String typed) {
        FieldInfo info = FieldInfo.of(field);
        try {
            Object value = FieldFormat.of(field, system, "USD", locale).parse(typed);
            return !(value instanceof Number number) || info.allows(number.doubleValue());
        } catch (FieldFormatException refused) {
            assertTrue(refused.getMessage().startsWith(info.label() + " is “" + typed + "”; it must be "), refused::getMessage);
            assertFalse(refused.getMessage().endsWith("must be ."), refused::getMessage);
            return false;
        }
    }
}
