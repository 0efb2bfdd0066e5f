package org.brakewright.model;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Plain name of a section, a text, a choice or a yes-or-no key of the build file. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Label {
    /** Lower case: "balance bar". */
    String value();

    /** What it is or how to tell, one sentence. */
    String how() default "";
}
