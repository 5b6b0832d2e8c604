package org.amberyard.batch;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/** What follows a verb: files and folders, and options. */
final class Arguments {
    static final String DEBUG = "--debug";

    private final Verb verb;
    private final List<String> operands = new ArrayList<>();
    private final Map<String, String> options = new LinkedHashMap<>();
    private final Set<String> flags = new HashSet<>();

    private Arguments(Verb verb) {
        this.verb = verb;
    }

    /** Reads the words after a verb. */
    static Arguments of(Verb verb, List<String> words) throws WrongUse {
        Arguments arguments = new Arguments(verb);
        Iterator<String> rest = words.iterator();
        while (rest.hasNext()) {
            arguments.take(rest.next(), rest);
        }
        return arguments;
    }

    private void take(String word, Iterator<String> rest) throws WrongUse {
        if (!word.startsWith("-")) {
            operands.add(word);
        } else if (verb.options().contains(word)) {
            takeOption(word, rest);
        } else if (verb.flags().contains(word)) {
            flags.add(word);
        } else if (!word.equals(DEBUG)) {
            TreeSet<String> allowed = new TreeSet<>(verb.options());
            allowed.addAll(verb.flags());
            allowed.add(DEBUG);
            throw new WrongUse("“" + verb.name() + "” has no option " + word + "; allowed: " + String.join(", ", allowed)
                    + ".");
        }
    }

    private void takeOption(String option, Iterator<String> rest) throws WrongUse {
        String value = rest.hasNext() ? rest.next() : "";
        if (value.isBlank() || value.startsWith("-")) {
            throw new WrongUse("Option " + option + " needs a value" + (value.isBlank() ? "" : " but is followed by " + value)
                    + ": " + verb.usage() + ".");
        }
        if (options.putIfAbsent(option, value) != null) {
            throw new WrongUse("Option " + option + " is given twice, with " + options.get(option) + " and " + value
                    + "; give it once.");
        }
    }

    /** The study's file. */
    Path study(Path folder) throws WrongUse {
        if (operands.size() != 1) {
            throw new WrongUse("“" + verb.name() + "” takes one study but got " + given() + ": " + verb.usage() + ".");
        }
        return path("STUDY", operands.get(0), folder);
    }

    /** The path of a folder to read. */
    Path folder(Path folder) throws WrongUse {
        return path("FOLDER", operands(1, "one folder").get(0), folder);
    }

    /** The paths of a folder to read and a study to write. */
    FolderAndStudy folderAndStudy(Path folder) throws WrongUse {
        operands(2, "a folder and a study");
        return new FolderAndStudy(path("FOLDER", operands.get(0), folder), path("STUDY", operands.get(1), folder));
    }

    /** The paths of a study to read and a folder to write. */
    StudyAndFolder studyAndFolder(Path folder) throws WrongUse {
        operands(2, "a study and a folder");
        return new StudyAndFolder(path("STUDY", operands.get(0), folder), path("FOLDER", operands.get(1), folder));
    }

    /** The paths of a study to change and a file to read. */
    StudyAndFile studyAndFile(Path folder) throws WrongUse {
        operands(2, "a study and a file");
        return new StudyAndFile(path("STUDY", operands.get(0), folder), path("FILE", operands.get(1), folder));
    }

    /** The path of a study, and the name of something in it. */
    StudyAndName studyAndName(Path folder) throws WrongUse {
        operands(2, "a study and a name");
        return new StudyAndName(path("STUDY", operands.get(0), folder), operands.get(1));
    }

    /** What stands before the options, when there is just so much of it. */
    List<String> operands(int count, String what) throws WrongUse {
        if (operands.size() != count) {
            throw new WrongUse("“" + verb.name() + "” takes " + what + " but got " + given() + ": " + verb.usage() + ".");
        }
        return List.copyOf(operands);
    }

    /** The path of a study that stands among other words. */
    Path studyOf(String word, Path folder) throws WrongUse {
        return path("STUDY", word, folder);
    }

    /** A folder and a study. */
    record FolderAndStudy(Path folder, Path study) {
    }

    /** A study and a folder. */
    record StudyAndFolder(Path study, Path folder) {
    }

    /** A study and a file. */
    record StudyAndFile(Path study, Path file) {
    }

    /** A study and the name of something in it. */
    record StudyAndName(Path study, String name) {
    }

    /** True when an option that takes no value is given. */
    boolean has(String flag) {
        return flags.contains(flag);
    }

    private String given() {
        return operands.isEmpty() ? "none" : operands.size() + " (" + String.join(", ", operands) + ")";
    }

    /** The path in an option that must be given. */
    Path path(String option, Path folder) throws WrongUse {
        if (!options.containsKey(option)) {
            throw new WrongUse("Option " + option + " is missing: " + verb.usage() + ".");
        }
        return path(option, options.get(option), folder);
    }

    /** A whole number that an option gives, if it is given. */
    OptionalInt whole(String option, int least, int most) throws WrongUse {
        String word = options.get(option);
        if (word == null) {
            return OptionalInt.empty();
        }
        try {
            int number = Integer.parseInt(word);
            if (number >= least && number <= most) {
                return OptionalInt.of(number);
            }
        } catch (NumberFormatException e) {
            // Told below, as a number out of range is.
        }
        throw new WrongUse(option + " is “" + word + "”; it must be a whole number from " + least + " to " + most + ".");
    }

    /** The value of an option that may be left out. */
    Optional<String> value(String option) {
        return Optional.ofNullable(options.get(option));
    }

    private static Path path(String argument, String value, Path folder) throws WrongUse {
        try {
            return folder.resolve(value).normalize();
        } catch (InvalidPathException e) {
            throw new WrongUse(argument + " is " + value + ", which is no file name on this system: " + e.getReason() + ".");
        }
    }
}
