package org.amberyard.model.io;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.MissingResourceException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Looks at the head of a file, before anything of it is loaded: is it a study, and of a version that can be read? */
final class FormatPeek {
    private static final Pattern NAMESPACE = Pattern.compile("urn:amberyard:study:(\\d{1,9})");

    private final StudyReader reader;

    private FormatPeek(StudyReader reader) {
        this.reader = reader;
    }

    /** @throws StudyFileException when the file is no XML, declares a document type, is no study or is too new */
    static void check(byte[] bytes, StudyReader reader) throws StudyFileException {
        FormatPeek peek = new FormatPeek(reader);
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(text(bytes));
            peek.checkRoot(peek.toRoot(xml));
        } catch (XMLStreamException e) {
            throw reader.damaged(LoadProblems.at(e.getLocation().getLineNumber())
                    + "it is not XML, or it is damaged there.", e);
        } catch (MissingResourceException e) {
            // The parser has no words of its own for a document type that is damaged.
            throw reader.damaged("it is not XML, or it is damaged at its beginning.", e);
        }
    }

    /**
     * The text of a file. The parser complains on the error stream of bytes that are no text, so it is given characters; whoever reads
     * the whole file says where such bytes stand.
     */
    private static Reader text(byte[] bytes) {
        boolean wide = bytes.length > 1 && (bytes[0] == (byte) 0xfe && bytes[1] == (byte) 0xff || bytes[0] == (byte) 0xff && bytes[1] == (byte) 0xfe);
        boolean marked = bytes.length > 2 && bytes[0] == (byte) 0xef && bytes[1] == (byte) 0xbb && bytes[2] == (byte) 0xbf;
        int from = marked ? 3 : 0;
        return new InputStreamReader(new ByteArrayInputStream(bytes, from, bytes.length - from),
                wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8);
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory;
    }

    private XMLStreamReader toRoot(XMLStreamReader xml) throws XMLStreamException, StudyFileException {
        while (xml.next() != XMLStreamConstants.START_ELEMENT) {
            if (xml.getEventType() == XMLStreamConstants.DTD) {
                throw reader.damaged(LoadProblems.at(xml.getLocation().getLineNumber())
                        + "it declares a document type (DOCTYPE). Study files never do; "
                        + "such a declaration can pull in other files or fill the memory.", null);
            }
        }
        return xml;
    }

    private void checkRoot(XMLStreamReader xml) throws StudyFileException {
        String namespace = xml.getNamespaceURI() == null ? "" : xml.getNamespaceURI();
        Matcher matcher = NAMESPACE.matcher(namespace);
        if (!matcher.matches() || !xml.getLocalName().equals("Study")) {
            throw reader.damaged(LoadProblems.at(xml.getLocation().getLineNumber())
                    + "it is not a study but begins with “" + xml.getLocalName() + "”.", null);
        }
        refuseNewer(Integer.parseInt(matcher.group(1)));
        String version = xml.getAttributeValue(null, "formatVersion");
        refuseNewer(version == null ? StudyFile.FORMAT_VERSION : number(version, xml));
    }

    private int number(String version, XMLStreamReader xml) throws StudyFileException {
        if (!version.matches("\\d{1,9}") || Integer.parseInt(version) == 0) {
            throw reader.damaged(LoadProblems.at(xml.getLocation().getLineNumber())
                    + "its format version “" + version + "” is not a whole number above 0.", null);
        }
        return Integer.parseInt(version);
    }

    private void refuseNewer(int version) throws StudyFileException {
        if (version > StudyFile.FORMAT_VERSION) {
            throw reader.refusal("it was written by a newer version (format " + version + "; this program reads up to "
                    + StudyFile.FORMAT_VERSION + ").", "Install the newer version of the program to open it.", null);
        }
    }
}
