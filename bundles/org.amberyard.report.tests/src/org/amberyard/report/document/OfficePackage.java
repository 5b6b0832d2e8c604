package org.amberyard.report.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Checks a package by the rules of ECMA-376 part 2, from memory: every part has a content type, every relationship leads to a
 * part, every XML part is well formed, no name twice, no time of the clock.
 */
final class OfficePackage {
    private static final String TYPES = "[Content_Types].xml";

    private OfficePackage() {
    }

    static void check(byte[] bytes) throws Exception {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                assertEquals(2000, entry.getTimeLocal().getYear());
                assertEquals(null, parts.put(entry.getName(), zip.readAllBytes()), entry.getName() + " is there twice");
            }
        }
        Document types = xml(parts.get(TYPES));
        for (Map.Entry<String, byte[]> part : parts.entrySet()) {
            String name = part.getKey();
            if (name.endsWith(".xml") || name.endsWith(".rels")) {
                Document xml = xml(part.getValue());
                if (name.endsWith(".rels")) {
                    checkTargets(name, xml, parts);
                }
            }
            assertTrue(name.equals(TYPES) || hasType(types, name), name + " has no content type");
        }
    }

    private static Document xml(byte[] bytes) throws Exception {
        assertNotNull(bytes);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    }

    private static void checkTargets(String name, Document relations, Map<String, byte[]> parts) {
        String source = name.replace("_rels/", "").replaceAll("\\.rels$", "");
        NodeList all = relations.getElementsByTagName("Relationship");
        for (int i = 0; i < all.getLength(); i++) {
            Element relation = (Element) all.item(i);
            assertTrue(!"External".equals(relation.getAttribute("TargetMode")), "nothing is outside");
            String target = URI.create("/" + source).resolve(relation.getAttribute("Target")).getPath().substring(1);
            assertTrue(parts.containsKey(target), name + " leads to " + target + ", which is not there");
        }
    }

    private static boolean hasType(Document types, String name) {
        return has(types, "Override", "PartName", "/" + name) || has(types, "Default", "Extension",
                name.substring(name.lastIndexOf('.') + 1));
    }

    private static boolean has(Document types, String tag, String attribute, String value) {
        NodeList all = types.getElementsByTagName(tag);
        for (int i = 0; i < all.getLength(); i++) {
            if (((Element) all.item(i)).getAttribute(attribute).equalsIgnoreCase(value)) {
                return true;
            }
        }
        return false;
    }
}
