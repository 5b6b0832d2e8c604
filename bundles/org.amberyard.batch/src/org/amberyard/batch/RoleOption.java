package org.amberyard.batch;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.plan.Role;

/** Roles of buses on the command line; route where none is given. */
final class RoleOption {
    static final String ROLES = "--roles";

    private RoleOption() {
    }

    static Set<Role> of(Arguments arguments) throws WrongUse {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        String given = arguments.value(ROLES).orElse(name(Role.ROUTE));
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
