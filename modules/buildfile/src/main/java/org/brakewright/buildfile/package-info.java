/** The build file: YAML to build, every fault at its line and column, and edits that keep the builder's comments. */
@NullMarked
package org.brakewright.buildfile;

import org.jspecify.annotations.NullMarked;
