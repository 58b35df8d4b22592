import type { ElementPart, PartInfo } from 'lit/directive.js';
import { Directive, directive, PartType } from 'lit/directive.js';

type Properties = Readonly<Record<string, string>>;

class Styled extends Directive {
  #set: Properties = {};

  constructor(part: PartInfo) {
    super(part);
    if (part.type !== PartType.ELEMENT) throw new Error('styled() stands in the tag itself');
  }

  render(_properties: Properties): void {}

  override update({ element }: ElementPart, [properties]: [Properties]): void {
    if (!('style' in element)) return;
    const { style } = element as HTMLElement;
    for (const [name, value] of Object.entries(properties)) {
      if (this.#set[name] !== value) style.setProperty(name, value);
    }
    this.#set = properties;
  }
}

/**
 * Sets style properties of the element it stands in, always the same names. By the object model,
 * not by a `style` attribute, which the pages' security policy forbids.
 */
export const styled = directive(Styled);
