package org.amberyard.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.lang.model.element.Modifier;
import org.junit.jupiter.api.Test;

/** Nothing static changes: what a program does hangs on what it is given, not on what it did before. */
class StateTest {
    private static final Pattern CHANGEABLE = Pattern.compile(
            "(?:\\w*Map|\\w*List|\\w*Set|\\w*Deque|\\w*Queue|Atomic\\w+|ThreadLocal|StringBuilder|Object)(?:<.*>)?");

    /** The theme shown now: one for the process, as its display is, and asked for from wherever a colour is needed. */
    private static final Set<String> ALLOWED = Set.of("workbench/Theme.java shown");

    private static Set<String> changingIn(SourceFile file) {
        Set<String> found = new TreeSet<>();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitClass(ClassTree type, Void unused) {
                if (!isMessages(type)) {
                    for (Tree member : type.getMembers()) {
                        if (member instanceof VariableTree field && isChanging(type, field)) {
                            found.add(file.bundle() + "/" + file.name() + " " + field.getName());
                        }
                    }
                }
                return super.visitClass(type, unused);
            }
        }.scan(file.unit(), null);
        return found;
    }

    /** Texts of the window are filled in by the platform, which asks for fields that are not final. */
    private static boolean isMessages(ClassTree type) {
        return type.getExtendsClause() != null && "NLS".equals(type.getExtendsClause().toString());
    }

    private static boolean isChanging(ClassTree type, VariableTree field) {
        Set<Modifier> flags = field.getModifiers().getFlags();
        if (type.getKind() == Tree.Kind.INTERFACE || !flags.contains(Modifier.STATIC)) {
            return false;
        }
        return !flags.contains(Modifier.FINAL) || isChangeable(field.getInitializer());
    }

    private static boolean isChangeable(ExpressionTree value) {
        return value instanceof NewClassTree made && CHANGEABLE.matcher(made.getIdentifier().toString()).matches();
    }

    @Test
    void nothingStaticChanges() {
        Set<String> found = new TreeSet<>();
        Sources.ofProduct().forEach(file -> found.addAll(changingIn(file)));
        assertEquals(ALLOWED, found);
    }
}
