package org.amberyard.model.io;

import java.io.CharConversionException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.amberyard.model.meta.ElementNames;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.ClassNotFoundException;
import org.eclipse.emf.ecore.xmi.FeatureNotFoundException;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.PackageNotFoundException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;
import org.xml.sax.SAXParseException;

/** Words what the XML reader complains of. */
final class LoadProblems {
    private static final int MOST_NAMED = 3;

    private LoadProblems() {
    }

    /** Beginning of a sentence about a line. */
    static String at(int line) {
        return line > 0 ? "line " + line + ": " : "";
    }

    /** The first problems of a resource, as sentences. */
    static String describe(Resource resource, Exception thrown) {
        Set<String> texts = new LinkedHashSet<>();
        resource.getErrors().forEach(e -> texts.add(at(e.getLine()) + text(e)));
        if (texts.isEmpty()) {
            texts.add(at(parseLine(thrown)) + text(thrown));
        }
        List<String> named = new ArrayList<>(texts).subList(0, Math.min(MOST_NAMED, texts.size()));
        int more = texts.size() - named.size();
        return String.join(" ", named) + (more > 0 ? " There are " + more + " more problems." : "");
    }

    private static String text(Object problem) {
        if (problem instanceof FeatureNotFoundException unknown) {
            return "unknown field “" + unknown.getName() + "” in " + element(unknown.getObject()) + ".";
        }
        if (problem instanceof ClassNotFoundException unknown) {
            return "unknown kind of element “" + unknown.getName() + "”.";
        }
        if (problem instanceof PackageNotFoundException unknown) {
            return unknown.uri() == null ? "an element does not say of which part of a study it is."
                    : "unknown part of a study “" + unknown.uri() + "”.";
        }
        if (problem instanceof IllegalValueException illegal) {
            return "“" + illegal.getValue() + "” is no value for the field “" + illegal.getFeature().getName() + "” of "
                    + element(illegal.getObject()) + ".";
        }
        if (problem instanceof UnresolvedReferenceException unresolved) {
            return "it refers to “" + unresolved.getReference() + "”, which it does not hold.";
        }
        return parseText(problem);
    }

    private static String element(Object element) {
        return element instanceof EObject known ? ElementNames.withKind(known) : "an element";
    }

    private static String parseText(Object problem) {
        Throwable thrown = (Throwable) problem;
        if (cause(thrown, CharConversionException.class) != null) {
            return "it is damaged there: these bytes are not text.";
        }
        SAXParseException parse = cause(thrown, SAXParseException.class);
        return parse == null ? "it is not a study as this program writes them."
                : "it is damaged or cut off there (" + parse.getMessage() + ").";
    }

    private static int parseLine(Throwable problem) {
        SAXParseException parse = cause(problem, SAXParseException.class);
        return parse == null ? 0 : parse.getLineNumber();
    }

    private static <T extends Throwable> T cause(Throwable problem, Class<T> kind) {
        for (Throwable t = problem; t != null; t = t.getCause()) {
            if (kind.isInstance(t)) {
                return kind.cast(t);
            }
        }
        return null;
    }
}
