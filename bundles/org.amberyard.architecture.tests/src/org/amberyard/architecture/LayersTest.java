package org.amberyard.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Data flows one way: who may use whom, by bundle, and by package within the core. */
class LayersTest {
    private static final String OWN = "org.amberyard.";

    /** The bundles that each may use. */
    private static final Map<String, Set<String>> BUNDLES = Map.of(
            "core", Set.of(),
            "model", Set.of(),
            "study", Set.of("core", "model"),
            "exchange", Set.of("core", "model", "study"),
            "charts", Set.of("core"),
            "report", Set.of("core", "model", "study", "charts"),
            "batch", Set.of("core", "model", "study", "exchange", "charts", "report"),
            "workbench", Set.of("core", "model", "study", "exchange", "charts", "report"));

    /** The libraries that each may use, by the beginnings of package names. */
    private static final Map<String, List<String>> LIBRARIES = Map.of(
            "core", List.of("java.util", "java.lang.ref", "java.time", "java.math", "org.apache.commons.math3"),
            "model", List.of("java.", "javax.xml.stream", "org.xml.sax", "org.eclipse.emf"),
            "study", List.of("java.util", "java.time", "java.math", "java.text", "java.nio", "java.security", "org.eclipse.emf"),
            "exchange", List.of("java.", "javax.xml", "org.xml.sax", "org.eclipse.emf", "org.apache.commons.csv", "org.apache.poi"),
            "charts", List.of("java.", "javax.xml", "javax.imageio", "org.w3c.dom", "org.jfree", "org.apache.batik",
                    "org.apache.pdfbox", "de.rototor.pdfbox"),
            "report", List.of("java.", "javax.xml", "org.eclipse.emf", "com.google.gson", "com.openhtmltopdf", "org.apache.pdfbox",
                    "org.apache.poi", "org.apache.xmlbeans", "org.openxmlformats"),
            "batch", List.of("java.", "org.eclipse.emf", "org.eclipse.equinox.app"),
            "workbench", List.of("java.", "org.eclipse", "org.osgi", "org.jfree"));

    /** The floors of the core, from the ground up: a package may use those of floors below its own. */
    private static final List<Set<String>> FLOORS = List.of(
            Set.of("battery", "math", "progress", "units", "why"),
            Set.of("consumption", "depot", "money", "optimum", "tariff", "upkeep"),
            Set.of("audit", "charging", "duty", "finance", "funding", "whatif"),
            Set.of("air", "trace", "yard"),
            Set.of("plan"),
            Set.of("variants"));

    private static List<String> refused(String bundle) {
        List<String> refused = new ArrayList<>();
        for (SourceFile file : Sources.ofBundle(bundle)) {
            for (String used : file.packagesUsed()) {
                if (!isAllowed(bundle, used)) {
                    refused.add(bundle + "/" + file.name() + " uses " + used);
                }
            }
        }
        return refused;
    }

    private static boolean isAllowed(String bundle, String used) {
        Set<String> bundles = BUNDLES.get(bundle);
        if (used.startsWith(OWN)) {
            String owner = used.substring(OWN.length()).split("\\.")[0];
            return owner.equals(bundle) || bundles.contains(owner);
        }
        return LIBRARIES.get(bundle).stream().anyMatch(used::startsWith);
    }

    @Test
    void bundlesUseOnlyWhatIsBelowThem() {
        assertEquals(List.of(), Sources.PRODUCT.stream().flatMap(bundle -> refused(bundle).stream()).toList());
    }

    @Test
    void packagesOfTheCoreUseOnlyFloorsBelow() {
        List<String> refused = new ArrayList<>();
        for (Map.Entry<String, Set<String>> uses : corePackages().entrySet()) {
            for (String used : uses.getValue()) {
                if (floor(used) >= floor(uses.getKey())) {
                    refused.add(uses.getKey() + " uses " + used);
                }
            }
        }
        assertEquals(List.of(), refused);
    }

    /** Every package of the core with those of the core that it uses. */
    private static Map<String, Set<String>> corePackages() {
        String core = OWN + "core.";
        Map<String, Set<String>> uses = new TreeMap<>();
        for (SourceFile file : Sources.ofBundle("core")) {
            Set<String> used = uses.computeIfAbsent(file.packageName().substring(core.length()), name -> new TreeSet<>());
            file.packagesUsed().stream().filter(name -> name.startsWith(core)).map(name -> name.substring(core.length()))
                    .forEach(used::add);
        }
        return uses;
    }

    private static int floor(String corePackage) {
        return Stream.iterate(0, floor -> floor + 1).limit(FLOORS.size()).filter(floor -> FLOORS.get(floor).contains(corePackage))
                .findFirst().orElseThrow(() -> new AssertionError("no floor for package " + corePackage));
    }
}
