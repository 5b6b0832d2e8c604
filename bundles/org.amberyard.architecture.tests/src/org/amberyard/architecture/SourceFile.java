package org.amberyard.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.Tree;
import com.sun.source.util.SourcePositions;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A source file as its text and as what the compiler's parser makes of it.
 *
 * @param bundle name of the bundle without {@code org.amberyard.}
 * @param path the file
 * @param text its text
 * @param unit its tree, parsed only: names are not resolved
 * @param positions where the parts of the tree stand
 */
record SourceFile(String bundle, Path path, String text, CompilationUnitTree unit, SourcePositions positions) {
    private static final Pattern QUALIFIED = Pattern.compile("\\b(?:[a-z][a-z0-9_]*\\.){2,}[A-Z]");
    private static final Pattern SAID = Pattern.compile("(?s)/\\*.*?\\*/|//[^\n]*|\"(?:\\\\.|[^\"\\\\\n])*\"");

    /** The package that the file is in. */
    String packageName() {
        return unit.getPackageName().toString();
    }

    /** File name without its folders. */
    String name() {
        return path.getFileName().toString();
    }

    /** All packages that the file names, by imports and in full, its own left out. */
    Set<String> packagesUsed() {
        Set<String> used = new TreeSet<>();
        Matcher qualified = QUALIFIED.matcher(code().replaceAll("(?m)^package .*$", ""));
        while (qualified.find()) {
            used.add(qualified.group().substring(0, qualified.group().length() - 2));
        }
        used.remove(packageName());
        return used;
    }

    /** The text with comments and strings taken out; lines stay where they are. */
    String code() {
        return SAID.matcher(text).replaceAll(found -> "\n".repeat((int) found.group().chars().filter(c -> c == '\n').count()));
    }

    /** Number of the line on which a part of the tree begins. */
    long firstLine(Tree part) {
        return lines().getLineNumber(positions.getStartPosition(unit, part));
    }

    /** How many lines a part of the tree takes. */
    long lineCount(Tree part) {
        return lines().getLineNumber(positions.getEndPosition(unit, part)) - firstLine(part) + 1;
    }

    /** Where a part stands, as people look for it. */
    String place(Tree part) {
        return bundle + "/" + name() + ":" + firstLine(part);
    }

    /** The text of a method with the comment above it. */
    String withComment(Tree method) {
        int start = (int) positions.getStartPosition(unit, method);
        int end = (int) positions.getEndPosition(unit, method);
        int before = Math.max(text.lastIndexOf("\n    }\n", start), text.lastIndexOf(";\n\n", start));
        return text.substring(Math.max(0, before), end);
    }

    private LineMap lines() {
        return unit.getLineMap();
    }
}
