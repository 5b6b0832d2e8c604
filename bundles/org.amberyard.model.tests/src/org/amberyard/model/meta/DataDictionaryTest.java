package org.amberyard.model.meta;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.amberyard.model.routes.RoutesPackage;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;

class DataDictionaryTest {
    private static final List<EClass> CLASSES = ModelPackages.all().stream()
            .flatMap(p -> p.getEClassifiers().stream()).filter(EClass.class::isInstance).map(EClass.class::cast).toList();

    @Test
    void everyElementOfTheModelIsDocumented() {
        Stream<EModelElement> all = ModelPackages.all().stream().flatMap(DataDictionaryTest::elements);
        assertAll(all.map(e -> () -> assertFalse(FieldInfo.documentation(e).isBlank(), e + " has no documentation")));
    }

    private static Stream<EModelElement> elements(EPackage subject) {
        Stream<EModelElement> inside = subject.getEClassifiers().stream().flatMap(c -> Stream.concat(Stream.of(c),
                c instanceof EClass type ? type.getEStructuralFeatures().stream()
                        : c instanceof EEnum choices ? choices.getELiterals().stream() : Stream.of()));
        return Stream.concat(Stream.of(subject), inside);
    }

    @Test
    void everyRowHasALabelThatIsNotTheName() {
        assertAll(DataDictionary.rows().stream().map(r -> () -> {
            assertFalse(r.label().isBlank(), r.toString());
            assertFalse(r.label().matches("[a-z].*"), r + " shows the name of the field");
        }));
    }

    @Test
    void numbersHaveUnitAndRange() {
        assertAll(attributes().filter(DataDictionaryTest::isNumber).map(a -> () -> {
            FieldInfo info = FieldInfo.of(a);
            assertFalse(info.unitToken().isEmpty(), a + " has no unit");
            assertTrue(info.max().isPresent(), a + " has no max");
            assertTrue(info.min().isPresent() != info.above().isPresent(), a + " needs just one of min and above");
        }));
    }

    @Test
    void defaultsLieInTheirRangeAndHaveASource() {
        assertAll(attributes().filter(a -> a.getDefaultValueLiteral() != null).map(a -> () -> {
            assertFalse(FieldInfo.of(a).defaultSource().isBlank(), a + " has a default without source");
            if (a.getDefaultValue() instanceof Number number) {
                assertInRange(FieldInfo.of(a), number.doubleValue(), a.toString());
            }
        }));
    }

    private static void assertInRange(FieldInfo info, double value, String field) {
        assertTrue(value <= info.max().orElseThrow(), field);
        assertTrue(value >= info.min().orElse(value), field);
        assertTrue(value > info.above().orElse(Double.NEGATIVE_INFINITY), field);
    }

    @Test
    void thereIsARowForEachClassAndEachFeature() {
        long features = CLASSES.stream().mapToLong(c -> c.getEStructuralFeatures().size()).sum();
        assertEquals(CLASSES.size() + features, DataDictionary.rows().size());
        assertEquals(CLASSES.size(), DataDictionary.rows().stream().filter(DataDictionary.Row::isElement).count());
    }

    @Test
    void aRowTellsWhatTheModelTells() {
        DataDictionary.Row row = row("Run", "distanceKm");
        assertEquals("routes", row.subject());
        assertEquals("Distance", row.label());
        assertEquals("km", row.unit());
        assertEquals("above 0 to 1000", row.range());
        assertEquals("30", row.defaultValue());
        assertEquals("morning, midday, afternoon, late, summer", row("Run", "kind").range());
        assertEquals("Service calendar", row("Run", "calendar").range());
        assertEquals("0 to 1439", row("Run", "departureMin").range());
        assertEquals("", row("Run", "name").range());
    }

    @Test
    void fieldsTellTheirLimits() {
        FieldInfo distance = FieldInfo.of(RoutesPackage.Literals.RUN__DISTANCE_KM);
        assertEquals(OptionalDouble.of(0), distance.above());
        assertEquals(OptionalDouble.empty(), distance.min());
        assertEquals("", FieldInfo.of(RoutesPackage.Literals.RUN__NAME).unitToken());
        assertEquals("Run", FieldInfo.classLabel(RoutesPackage.Literals.RUN));
    }

    private static DataDictionary.Row row(String element, String field) {
        return DataDictionary.rows().stream().filter(r -> r.element().equals(element) && r.field().equals(field))
                .findFirst().orElseThrow();
    }

    private static Stream<EAttribute> attributes() {
        return CLASSES.stream().flatMap(c -> c.getEStructuralFeatures().stream())
                .filter(EAttribute.class::isInstance).map(EAttribute.class::cast);
    }

    private static boolean isNumber(EStructuralFeature feature) {
        Class<?> type = feature.getEType().getInstanceClass();
        return type == double.class || type == Double.class || FieldWords.isWhole(feature);
    }
}
