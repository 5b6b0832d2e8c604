package org.amberyard.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.source.tree.MethodTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Classes and methods stay of a size that is read at one sitting, tests included. */
class SizesTest {
    private static final int CLASS_LINES = 400;
    private static final int METHOD_LINES = 60;
    private static final int PARAMETERS = 8;

    private interface Rule {
        boolean isBroken(SourceFile file, MethodTree method);
    }

    private static Set<String> methods(List<SourceFile> files, Rule rule) {
        Set<String> found = new TreeSet<>();
        for (SourceFile file : files) {
            new TreeScanner<Void, Void>() {
                @Override
                public Void visitMethod(MethodTree method, Void unused) {
                    if (rule.isBroken(file, method)) {
                        found.add(file.bundle() + "/" + file.name() + " " + method.getName());
                    }
                    return super.visitMethod(method, unused);
                }
            }.scan(file.unit(), null);
        }
        return found;
    }

    private static boolean isAskedFor(MethodTree method) {
        return method.getModifiers().getAnnotations().stream()
                .anyMatch(annotation -> "Override".equals(annotation.getAnnotationType().toString()));
    }

    @Test
    void filesAreShort() {
        List<String> found = new ArrayList<>();
        for (SourceFile file : Sources.ofEverything()) {
            if (file.text().lines().count() > CLASS_LINES) {
                found.add(file.bundle() + "/" + file.name());
            }
        }
        assertEquals(List.of(), found);
    }

    @Test
    void methodsAreShort() {
        assertEquals(Set.of(), methods(Sources.ofEverything(), (file, method) -> file.lineCount(method) > METHOD_LINES));
    }

    /** Records are lists of values by their nature, and what a library asks for is not ours to choose. */
    @Test
    void methodsTakeFewThings() {
        assertEquals(Set.of(), methods(Sources.ofProduct(), (file, method) -> method.getParameters().size() > PARAMETERS
                && !"<init>".contentEquals(method.getName()) && !isAskedFor(method)));
    }
}
