package org.amberyard.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.sun.source.tree.MethodTree;
import com.sun.source.util.TreeScanner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Nobody has to guess where a figure comes from: defaults and reference tests say it, if only that there is no source. */
class SourcesSaidTest {
    private static final Path MODEL = Sources.bundles().resolve("org.amberyard.model/model");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+(?:[eE]-?[0-9]+)?");

    /** A work of a year, or a word that there is none. */
    private static final Pattern SAID = Pattern.compile("\\b(?:1[89]|20)[0-9]{2}\\b|[Ff]rom memory|[Nn]o source|[Ii]nvented|"
            + "independently|by hand|by definition|closed form|SciPy|PROVENANCE|Publication|[Rr]ead (?:in|as|on)");

    /** Attributes of the model's files. */
    private static List<Element> attributes() throws Exception {
        List<Element> attributes = new ArrayList<>();
        for (Path file : Sources.files(MODEL, ".ecore")) {
            Document model = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
            NodeList features = model.getElementsByTagName("eStructuralFeatures");
            for (int place = 0; place < features.getLength(); place++) {
                attributes.add((Element) features.item(place));
            }
        }
        assertFalse(attributes.isEmpty());
        return attributes;
    }

    private static String detail(Element attribute, String key) {
        NodeList details = attribute.getElementsByTagName("details");
        for (int place = 0; place < details.getLength(); place++) {
            Element detail = (Element) details.item(place);
            if (key.equals(detail.getAttribute("key"))) {
                return detail.getAttribute("value");
            }
        }
        return "";
    }

    private static String name(Element attribute) {
        return ((Element) attribute.getParentNode()).getAttribute("name") + "." + attribute.getAttribute("name");
    }

    @Test
    void everyFieldHasAMeaningAndALabel() throws Exception {
        List<String> wanting = new ArrayList<>();
        for (Element attribute : attributes()) {
            if (detail(attribute, "documentation").isBlank() || detail(attribute, "label").isBlank()) {
                wanting.add(name(attribute));
            }
        }
        assertEquals(List.of(), wanting);
    }

    @Test
    void everyDefaultSaysWhereItComesFrom() throws Exception {
        List<String> wanting = new ArrayList<>();
        for (Element attribute : attributes()) {
            boolean number = NUMBER.matcher(attribute.getAttribute("defaultValueLiteral")).matches();
            if (number && detail(attribute, "default source").isBlank()) {
                wanting.add(name(attribute));
            }
        }
        assertEquals(List.of(), wanting);
    }

    @Test
    void everyReferenceTestSaysWhatItIsHeldAgainst() {
        // A class says it for all its tests, or each test for itself, in a comment of its own or by naming the one above.
        List<String> wanting = new ArrayList<>();
        for (SourceFile file : Sources.ofBundle("reference.tests").stream().filter(f -> f.name().endsWith("Test.java")).toList()) {
            String head = file.text().substring(0, file.text().indexOf("\nclass ") + 1);
            boolean ofAll = SAID.matcher(head).find();
            if (!SAID.matcher(file.text()).find()) {
                wanting.add(file.name());
            }
            new TreeScanner<Void, Void>() {
                @Override
                public Void visitMethod(MethodTree method, Void unused) {
                    boolean test = method.getModifiers().getAnnotations().toString().matches(".*(?:Test|Property)\\b.*");
                    if (test && !ofAll && !file.withComment(method).contains("/**")) {
                        wanting.add(file.name() + " " + method.getName());
                    }
                    return super.visitMethod(method, unused);
                }
            }.scan(file.unit(), null);
        }
        assertEquals(List.of(), wanting);
    }
}
