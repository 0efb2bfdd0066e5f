package org.brakewright.model;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.brakewright.quantity.Dimension;

/**
 * What the build file asks at one key: this drives reading, the published schema, the page's form and the ledger's names.
 * The key is the component's name in snake_case.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Asked {
    /** Plain name for people, lower case: "pad friction". */
    String label();

    /** What kind of quantity is due; for lists, of each entry. */
    Dimension dimension();

    /** Smallest value allowed, SI, included. */
    double least() default Double.NEGATIVE_INFINITY;

    /** Largest value allowed, SI, included. */
    double most() default Double.POSITIVE_INFINITY;

    /** Why values outside are refused, a clause that follows "because". */
    String why() default "";

    /** How to find the value on the car, one sentence. */
    String how() default "";
}
