import { useState } from 'react';
import type { CrossingDetail, PolicyOption } from '#contract/windows/crossing-window.ts';
import type { ReplacementPolicy } from '#domain/decision.ts';
import { decimalOf } from '#units/entered.ts';
import { asTyped, Button, Field, showFraction } from '../../parts/parts.ts';
import styles from './crossing-page.module.css';
import { PolicySignature } from './policy-signature.tsx';

const OWN = 'own share';

const keyOf = (policy: ReplacementPolicy): string => (typeof policy === 'string' ? policy : OWN);

interface PolicyChoiceProps {
  readonly person: string;
  readonly detail: CrossingDetail;
}

/** How much body weight is added back: the choices with what each of them comes to. */
export function PolicyChoice({ person, detail }: PolicyChoiceProps) {
  const { signedPolicy } = detail;
  const [chosen, setChosen] = useState(keyOf(signedPolicy));
  const [own, setOwn] = useState(typeof signedPolicy === 'string' ? '' : String(signedPolicy.share));
  const [isSigning, setSigning] = useState(false);
  const policy = policyOf(chosen, own);
  const isSigned = policy !== null && JSON.stringify(policy) === JSON.stringify(signedPolicy);
  const named = detail.policies.filter((option) => keyOf(option.policy) !== OWN);
  return (
    <section>
      <fieldset className={styles['policies']}>
        <legend>Body weight added back</legend>
        {named.map((option) => (
          <Option
            key={keyOf(option.policy)}
            option={option}
            isChosen={chosen === keyOf(option.policy)}
            isSigned={keyOf(signedPolicy) === keyOf(option.policy)}
            onChoose={() => setChosen(keyOf(option.policy))}
          />
        ))}
        <OwnShare detail={detail} isChosen={chosen === OWN} own={own} onOwn={setOwn} onChoose={() => setChosen(OWN)} />
      </fieldset>
      <Button kind="main" isDisabled={policy === null || isSigned} onPress={() => setSigning(true)}>
        Sign
      </Button>
      <p className="soft small">
        {isSigned ? 'This is the policy that stands. ' : ''}A physician’s restriction and the ceiling limit every
        policy.
      </p>
      {policy !== null && isSigning && (
        <PolicySignature person={person} detail={detail} policy={policy} onClose={() => setSigning(false)} />
      )}
    </section>
  );
}

interface OptionProps {
  readonly option: PolicyOption;
  readonly isChosen: boolean;
  readonly isSigned: boolean;
  readonly onChoose: () => void;
}

function Option({ option, isChosen, isSigned, onChoose }: OptionProps) {
  return (
    <div className={styles['policy']}>
      <label>
        <input type="radio" name="policy" checked={isChosen} onChange={onChoose} />
        <span>
          {option.label} <span className="soft">{option.note}</span>
          {isSigned && <span className="small"> · signed</span>}
        </span>
        <span className="number">{showFraction(option.share)}</span>
      </label>
      <p className="soft small">
        Full load {option.fullLoad}, true fraction {showFraction(option.trueFraction)} of capacity.
      </p>
      {option.cautions.map((caution) => (
        <p key={caution} className={styles['caution']}>
          {caution}
        </p>
      ))}
    </div>
  );
}

interface OwnShareProps {
  readonly detail: CrossingDetail;
  readonly isChosen: boolean;
  readonly own: string;
  readonly onOwn: (text: string) => void;
  readonly onChoose: () => void;
}

function OwnShare({ detail, isChosen, own, onOwn, onChoose }: OwnShareProps) {
  const signed = detail.policies.find((option) => keyOf(option.policy) === OWN);
  return (
    <div className={styles['policy']}>
      <label>
        <input type="radio" name="policy" checked={isChosen} onChange={onChoose} />
        <span>Own share</span>
        <span className="number">{signed ? showFraction(signed.share) : '–'}</span>
      </label>
      {signed && (
        <p className="soft small">
          Full load {signed.fullLoad}, true fraction {showFraction(signed.trueFraction)} of capacity.
        </p>
      )}
      {isChosen && (
        <Field
          label="Share of body weight"
          value={own}
          onChange={onOwn}
          inputMode="decimal"
          isNarrow
          hint="0 to 1.2; the work-matched one is the segment model’s"
        />
      )}
    </div>
  );
}

const MOST_SHARE = 1.2;

const policyOf = (chosen: string, own: string): ReplacementPolicy | null => {
  if (chosen === 'work-matched' || chosen === 'joint-matched' || chosen === 'whole') return chosen;
  const share = decimalOf(asTyped(own));
  return share === null || share < 0 || share > MOST_SHARE ? null : { share };
};
