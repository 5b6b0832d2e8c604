package org.amberyard.architecture;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;
import org.eclipse.jdt.core.JavaCore;
import org.eclipse.jdt.core.ToolFactory;
import org.eclipse.jdt.core.formatter.CodeFormatter;
import org.eclipse.jdt.core.formatter.DefaultCodeFormatterConstants;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.Document;
import org.eclipse.text.edits.TextEdit;

/** The one layout of all sources, that of the formatter under the settings in {@code layout.properties}; run, it lays them out; public, so that the build tool can run it. */
public final class SourceLayout {
    private static final String PREFIX = "org.eclipse.jdt.core.formatter.";

    private final CodeFormatter formatter;

    SourceLayout() throws IOException {
        Map<String, String> options = new HashMap<>(DefaultCodeFormatterConstants.getEclipseDefaultSettings());
        JavaCore.setComplianceOptions(JavaCore.VERSION_17, options);
        Properties settings = new Properties();
        try (Reader in = Files.newBufferedReader(Sources.bundles().resolve("org.amberyard.architecture.tests/layout.properties"))) {
            settings.load(in);
        }
        settings.stringPropertyNames().forEach(name -> options.put(PREFIX + name, settings.getProperty(name)));
        formatter = ToolFactory.createCodeFormatter(options);
    }

    /** A source laid out; as it is where it cannot be parsed. */
    String of(String source) {
        TextEdit edit = formatter.format(CodeFormatter.K_COMPILATION_UNIT, source, 0, source.length(), 0, "\n");
        if (edit == null) {
            return source;
        }
        Document laidOut = new Document(source);
        try {
            edit.apply(laidOut);
        } catch (BadLocationException e) {
            throw new IllegalStateException("The formatter edits outside the source", e);
        }
        return laidOut.get();
    }

    /** Lays out all sources that are not yet. */
    public static void main(String[] none) throws IOException {
        SourceLayout layout = new SourceLayout();
        for (SourceFile file : Sources.ofEverything()) {
            String laidOut = layout.of(file.text());
            if (!laidOut.equals(file.text())) {
                Files.writeString(file.path(), laidOut);
                System.out.println(Sources.project().relativize(file.path()));
            }
        }
    }
}
