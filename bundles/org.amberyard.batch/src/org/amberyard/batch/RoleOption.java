package org.amberyard.batch;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.plan.Role;

/** Roles of buses on the command line. */
final class RoleOption {
    static final String ROLES = "--roles";

    private RoleOption() {
    }

    /** @param ifNone the roles where none are given */
    static Set<Role> of(Arguments arguments, Set<Role> ifNone) throws WrongUse {
        Optional<String> given = arguments.value(ROLES);
        return given.isPresent() ? roles(given.get()) : ifNone;
    }

    private static Set<Role> roles(String given) throws WrongUse {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        for (String word : given.split(",", -1)) {
            roles.add(Arrays.stream(Role.values()).filter(r -> name(r).equals(word.strip())).findFirst()
                    .orElseThrow(() -> new WrongUse(ROLES + " is “" + given + "”; it must be made of "
                            + Arrays.stream(Role.values()).map(RoleOption::name).collect(Collectors.joining(", "))
                            + ", separated by commas.")));
        }
        return roles;
    }

    private static String name(Role role) {
        return role.name().toLowerCase(Locale.ROOT);
    }
}
