package org.amberyard.report.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.DocumentDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.FtrDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.HdrDocument;

/**
 * Holds the main parts of Office files against the schemas of ECMA-376, as the library carries them: all but the styles of word
 * processors, for which it lacks some.
 */
public final class OfficeSchema {

    private interface Parser {
        XmlObject parse(ByteArrayInputStream in) throws XmlException, IOException;
    }

    private static final Map<String, Parser> PARTS = Map.of("word/document\\.xml", DocumentDocument.Factory::parse,
            "word/footer\\d+\\.xml", FtrDocument.Factory::parse,
            "word/header\\d+\\.xml", HdrDocument.Factory::parse, "xl/workbook\\.xml", WorkbookDocument.Factory::parse,
            "xl/styles\\.xml", StyleSheetDocument.Factory::parse, "xl/worksheets/sheet\\d+\\.xml",
            WorksheetDocument.Factory::parse);

    private OfficeSchema() {
    }

    /** Checks a file; there are as many main parts as said at least. */
    public static void check(byte[] file, int parts) throws Exception {
        int checked = 0;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                String name = entry.getName();
                byte[] bytes = zip.readAllBytes();
                for (Map.Entry<String, Parser> part : PARTS.entrySet()) {
                    if (name.matches(part.getKey())) {
                        assertEquals(List.of(), errors(part.getValue().parse(new ByteArrayInputStream(bytes))), name);
                        checked++;
                    }
                }
            }
        }
        assertEquals(parts, Math.min(parts, checked), "parts checked");
    }

    /** What is wrong with a part by its schema. */
    static List<String> errors(XmlObject part) {
        List<XmlError> found = new ArrayList<>();
        part.validate(new XmlOptions().setErrorListener(found));
        return found.stream().map(XmlError::getMessage).toList();
    }
}
