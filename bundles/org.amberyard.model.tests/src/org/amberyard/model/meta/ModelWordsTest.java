package org.amberyard.model.meta;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.common.Month;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesFactory;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.routes.Run;
import org.amberyard.model.study.StudyFactory;
import org.junit.jupiter.api.Test;

/** The model speaks Spanish as completely as English. */
class ModelWordsTest {
    private static final ModelWords SPANISH = ModelWords.of(new Locale("es", "US"));
    private static final Set<String> WORDS = Set.of("word.yes", "word.no", "word.of", "word.asBaseYear", "word.notTold", "word.allFields");
    /** Labels and choices that are the same in Spanish. */
    private static final Set<String> ALIKE = Set.of("A", "B", "C", "D", "AR4", "AR5", "AR6", "CO", "CO2", "CH4", "N2O", "NOx", "SO2", "HC", "PM2.5",
            "LFP", "NMC", "PERT", "VIN", "Base", "Gas", "Plan", "Factor", "Local", "normal", "nominal", "real", "federal", "local", "marginal",
            "lineal", "uniform", "triangular", "Gas.");

    @Test
    void everyTextHasItsSpanishAndNoMore() {
        Set<String> keys = new TreeSet<>(ModelWords.english().keySet());
        keys.addAll(WORDS);
        Set<String> spanish = new TreeSet<>();
        SPANISH.keys().forEach(spanish::add);
        assertEquals(keys, spanish);
    }

    @Test
    void noTextIsBlankOrLeftInEnglish() {
        for (Map.Entry<String, String> text : ModelWords.english().entrySet()) {
            String spanish = SPANISH.text(text.getKey()).orElseThrow();
            assertFalse(spanish.isBlank(), text.getKey());
            assertTrue(!spanish.equals(text.getValue()) || ALIKE.contains(spanish), text.getKey() + ": " + spanish);
            assertTrue(!text.getKey().endsWith(".doc") || spanish.endsWith("."), text.getKey());
        }
    }

    @Test
    void figuresInMeaningsStay() {
        List<String> keys = ModelWords.english().keySet().stream().filter(k -> k.endsWith(".doc")).toList();
        for (String key : keys) {
            assertEquals(figures(ModelWords.english().get(key)), figures(SPANISH.text(key).orElseThrow()), key);
        }
    }

    private static List<String> figures(String text) {
        return text.replaceAll("[^0-9.]+", " ").replaceAll("\\.(?![0-9])|(?<![0-9])\\.", " ").strip().lines()
                .flatMap(l -> List.of(l.split("\\s+")).stream()).sorted().toList();
    }

    @Test
    void fieldsChoicesAndKindsAreSaid() {
        assertEquals("Distancia", SPANISH.field(RoutesPackage.Literals.RUN__DISTANCE_KM).label());
        assertEquals("enero", SPANISH.choice(CommonPackage.Literals.MONTH, Month.JANUARY));
        assertEquals("C", SPANISH.choice(CommonPackage.Literals.BODY_TYPE, BodyType.C));
        assertEquals("Ruta", SPANISH.kind(RoutesPackage.Literals.ROUTE));
        assertEquals("sí", SPANISH.flag(true));
    }

    @Test
    void anElementIsNamedWithItsKindAndOwner() {
        Route route = RoutesFactory.eINSTANCE.createRoute();
        route.setName("R01");
        Run run = RoutesFactory.eINSTANCE.createRun();
        run.setName("AM");
        route.getRuns().add(run);
        StudyFactory.eINSTANCE.createStudy().getRoutes().add(route);
        assertEquals("run AM of route R01", ElementNames.withKind(run));
        assertEquals("recorrido AM de ruta R01", ElementNames.withKind(run, SPANISH, ElementNames::of));
    }

    @Test
    void otherLanguagesAreEnglish() {
        assertSame(ModelWords.ENGLISH, ModelWords.of(Locale.FRENCH));
    }
}
