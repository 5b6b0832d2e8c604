package org.amberyard.exchange;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.MissingResourceException;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads XML that nobody vouches for: no document types, no entities from elsewhere, bounded texts and depths. */
final class SafeXml {
    /** Longer than any text that an importer asks for. */
    private static final int MOST_TEXT = 4000;
    private static final int MOST_LEAVES = 500;
    private static final int MOST_DEPTH = 40;
    private static final String DAMAGED = "The file is not XML, or it is damaged there.";

    private SafeXml() {
    }

    /** Reads the elements of a file. */
    interface Elements {
        void read(XMLStreamReader xml) throws XMLStreamException;
    }

    /**
     * Reads a file; that it is too large, damaged or cannot be read is then among the problems.
     *
     * @param tooLarge said of a file of more than so many bytes
     */
    static void read(Path path, long mostBytes, String tooLarge, ProblemList problems, Elements elements) {
        try {
            if (Files.size(path) > mostBytes) {
                problems.add(0, "", tooLarge);
                return;
            }
            try (Reader text = XmlText.of(Files.newInputStream(path))) {
                elements.read(reader(text));
            }
        } catch (XMLStreamException e) {
            tellDamage(e, problems);
        } catch (MissingResourceException e) {
            // The parser has no words of its own for a document type that is damaged.
            problems.add(0, "", DAMAGED);
        } catch (CharacterCodingException e) {
            problems.add(0, "", "Bytes of the file stand for no character of its encoding; save it anew as UTF-8.");
        } catch (IOException e) {
            problems.add(0, "", "The file cannot be read: " + e.getMessage());
        }
    }

    private static XMLStreamReader reader(Reader text) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory.createXMLStreamReader(text);
    }

    /** Moves to the root element; false when the file declares a document type, which is then among the problems. */
    static boolean toRoot(XMLStreamReader xml, String kind, ProblemList problems) throws XMLStreamException {
        while (xml.next() != XMLStreamConstants.START_ELEMENT) {
            if (xml.getEventType() == XMLStreamConstants.DTD) {
                problems.add(line(xml), "", "The file declares a document type (DOCTYPE). " + kind + " files never need one; "
                        + "such a declaration can pull in other files or fill the memory.");
                return false;
            }
        }
        return true;
    }

    /** Line on which a reader stands, from 1. */
    static int line(XMLStreamReader xml) {
        return Math.max(0, xml.getLocation().getLineNumber());
    }

    private static void tellDamage(XMLStreamException damage, ProblemList problems) {
        problems.add(damage.getLocation() == null ? 0 : Math.max(0, damage.getLocation().getLineNumber()), "",
                DAMAGED);
    }

    /**
     * Texts of the elements without children below the one on whose start a reader stands, by local name, and the reader on its
     * end. Of elements of one name the last counts.
     */
    static Map<String, String> leaves(XMLStreamReader xml) throws XMLStreamException {
        Map<String, String> leaves = new HashMap<>();
        Deque<StringBuilder> open = new ArrayDeque<>();
        open.push(new StringBuilder());
        boolean leaf = false;
        while (!open.isEmpty()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                open.push(new StringBuilder());
                leaf = true;
            } else if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA) {
                append(xml, open.peek());
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                String text = open.pop().toString();
                if (leaf && !open.isEmpty()) {
                    leaves.put(xml.getLocalName(), text.strip());
                }
                leaf = false;
            }
            refuse(xml, open.size() > MOST_DEPTH || leaves.size() > MOST_LEAVES);
        }
        return leaves;
    }

    private static void append(XMLStreamReader xml, StringBuilder text) throws XMLStreamException {
        refuse(xml, text.length() + xml.getTextLength() > MOST_TEXT);
        text.append(xml.getTextCharacters(), xml.getTextStart(), xml.getTextLength());
    }

    private static void refuse(XMLStreamReader xml, boolean tooMuch) throws XMLStreamException {
        if (tooMuch) {
            throw new XMLStreamException("More than is understood", xml.getLocation());
        }
    }

    /** The text of an element, with those of its children, and the reader on its end. */
    static String text(XMLStreamReader xml) throws XMLStreamException {
        StringBuilder text = new StringBuilder();
        for (int depth = 1; depth > 0;) {
            int event = xml.next();
            depth += step(event);
            if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA) {
                append(xml, text);
            }
            refuse(xml, depth > MOST_DEPTH);
        }
        return text.toString().strip();
    }

    private static int step(int event) {
        return event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
    }

    /** Moves from the start of an element to its end. */
    static void skip(XMLStreamReader xml) throws XMLStreamException {
        for (int depth = 1; depth > 0;) {
            depth += step(xml.next());
            refuse(xml, depth > MOST_DEPTH);
        }
    }
}
