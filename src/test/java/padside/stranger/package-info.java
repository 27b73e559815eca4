/** A made-up room that breaks the rules of the house, to show that they bite. */
package padside.stranger;
