package org.brakewright.model;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Names the {@code kind:} that selects a record of a sealed interface in the build file. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Kind {
    /** The word after {@code kind:}, for example {@code twin_masters}. */
    String value();
}
