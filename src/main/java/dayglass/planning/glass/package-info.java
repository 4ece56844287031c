/** Whether glass gives the picture that a brief wants, and which slots of a job it then serves; knows no cost. */
@NullMarked
package dayglass.planning.glass;

import org.jspecify.annotations.NullMarked;
